import { useWords } from "#web/language/index.ts";
import { cautionNamed, type CautionId } from "#base";
import { CautionLine, CautionWords } from "#web/parts/caution-box.tsx";
import { isGraver, sayShort, type HazardsMet, type Load } from "./moments.ts";
import "./hazards.css";

interface HazardsProps extends HazardsMet {
  /** What is lifted, where that is known. */
  readonly load?: Load | undefined;
}

/**
 * Hazards where the hand is: a line each for those that are new, with what to do on it; those met before in one, which
 * stands first where it is graver.
 */
export function Hazards({ fresh, met, load }: HazardsProps) {
  const words = useWords("hazards");
  if (fresh.length === 0) return <InOneLine ids={met} load={load} />;
  const isMetFirst = isGraver(met, fresh);
  return (
    <section className="hazards" aria-label={words.hazards()}>
      {isMetFirst && <InOneLine ids={met} load={load} />}
      {fresh.map((id) => (
        <HazardLine key={id} id={id} load={load} />
      ))}
      {!isMetFirst && <InOneLine ids={met} load={load} />}
    </section>
  );
}

function HazardLine({ id, load }: Pick<HazardsProps, "load"> & { readonly id: CautionId }) {
  const words = useWords("hazards");
  const caution = cautionNamed(id);
  const short = sayShort(id, words, load);
  return (
    <CautionLine signal={caution.signal} hazard={caution.hazard} {...(short !== undefined && { short })}>
      <CautionWords caution={caution} />
    </CautionLine>
  );
}

/** One line with all their names, under the gravest signal word. */
function InOneLine({ ids, load }: Pick<HazardsProps, "load"> & { readonly ids: readonly CautionId[] }) {
  const cautions = ids.map(cautionNamed);
  const [gravest] = cautions;
  if (!gravest) return null;
  return (
    <CautionLine signal={gravest.signal} hazard={sayNames(cautions.map(({ hazard }) => hazard))}>
      {ids.map((id) => (
        <HazardLine key={id} id={id} load={load} />
      ))}
    </CautionLine>
  );
}

/** "Petrol not yet smelt, carbon monoxide". */
function sayNames(names: readonly string[]): string {
  return names.map((name, i) => (i === 0 ? name : name.charAt(0).toLowerCase() + name.slice(1))).join(", ");
}
