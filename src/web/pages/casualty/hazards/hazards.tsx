import { cautionNamed, type CautionId } from "#base";
import { CautionLine, CautionWords } from "../../../parts/caution-box.tsx";
import { hazardsAt, SHORT, type Moment } from "./moments.ts";
import "./hazards.css";

interface HazardsProps {
  readonly moment: Moment;
  /** The moment is here for the first time on this casualty: each hazard has a line, with what to do on it. */
  readonly isFirst: boolean;
}

/** The hazards of a moment, where the hand is: a line each the first time, then all of them in one. */
export function Hazards({ moment, isFirst }: HazardsProps) {
  const ids = hazardsAt(moment);
  if (!isFirst) return <InOneLine ids={ids} />;
  return (
    <section className="hazards" aria-label="Hazards">
      {ids.map((id) => (
        <HazardLine key={id} id={id} />
      ))}
    </section>
  );
}

function HazardLine({ id }: { readonly id: CautionId }) {
  const caution = cautionNamed(id);
  const short = SHORT[id];
  return (
    <CautionLine signal={caution.signal} hazard={caution.hazard} {...(short !== undefined && { short })}>
      <CautionWords caution={caution} />
    </CautionLine>
  );
}

/** One line with all their names, under the gravest signal word. */
function InOneLine({ ids }: { readonly ids: readonly CautionId[] }) {
  const cautions = ids.map(cautionNamed);
  const [gravest] = cautions;
  if (!gravest) return null;
  return (
    <CautionLine signal={gravest.signal} hazard={sayNames(cautions.map(({ hazard }) => hazard))}>
      {ids.map((id) => (
        <HazardLine key={id} id={id} />
      ))}
    </CautionLine>
  );
}

/** "Petrol not yet smelt, carbon monoxide". */
function sayNames(names: readonly string[]): string {
  return names.map((name, i) => (i === 0 ? name : name.charAt(0).toLowerCase() + name.slice(1))).join(", ");
}
