import { useWords, withParts } from "#web/language/index.ts";
import { sayDuration, sayFlow } from "#words";
import type { KitsNeededAnswer } from "#questions";
import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { sayStarts } from "./before-launch-words.ts";
import type { KitsAtHand, UsableKit } from "./usable-kits.ts";

interface KitsInOrderProps {
  readonly answer: KitsNeededAnswer;
  readonly atHand: KitsAtHand;
}

type Counted = KitsNeededAnswer["kits"][number];

/** Which kits, by name and in the order to take them; then those that follow, and those that stay with the reason. */
export function KitsInOrder({ answer: { kits, plan }, atHand }: KitsInOrderProps) {
  const words = useWords("launch");
  const taken = kits.slice(0, plan.now);
  const rest = kits.slice(plan.now);
  return (
    <>
      {taken.length > 0 && (
        <div>
          <strong>{words.inOrder()}</strong>
          <ol className="launch-kits">
            <KitLines kits={taken} atHand={atHand} />
          </ol>
        </div>
      )}
      {rest.length > 0 && (
        <details className="casualty-more">
          <summary>{words.thenTake({ kits: rest.map(({ name }) => name).join(", ") })}</summary>
          <ul className="launch-kits">
            <KitLines kits={rest} atHand={atHand} />
          </ul>
        </details>
      )}
      {kits.length === 0 && <p>{words.noneUsable()}</p>}
      {atHand.back.length > 0 && (
        <details className="casualty-more">
          <summary>{words.stay({ count: atHand.back.length })}</summary>
          <ul className="casualty-list">
            {atHand.back.map(({ name, why }) => (
              <li key={name}>{withParts(words.stays, { kit: <strong>{name}</strong>, why })}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

interface KitLinesProps extends Pick<KitsInOrderProps, "atHand"> {
  readonly kits: readonly Counted[];
}

function KitLines({ kits, atHand }: KitLinesProps) {
  return kits.map((kit) => (
    <li key={kit.name}>
      <KitLine kit={kit} known={atHand.usable.find(({ name }) => name === kit.name)} />
    </li>
  ));
}

function KitLine({ kit, known }: { readonly kit: Counted; readonly known: UsableKit | undefined }) {
  const words = useWords("launch");
  const { units } = usePreferences();
  const { p05, p50, p95 } = kit.moves;
  const moves = {
    kit: <strong>{kit.name}</strong>,
    flow: sayFlow(p50, units),
    low: sayFlow(p05, units),
    high: sayFlow(p95, units),
    starts: sayStarts(kit, known?.runs, words),
  };
  return (
    <>
      {known ? withParts(words.kitAt, { ...moves, place: known.placeName }) : withParts(words.kitAlone, moves)}
      {known?.prime !== undefined && words.primedIn({ duration: sayDuration(known.prime) })}
      {known?.provedAt !== undefined && known.proved !== undefined
        ? withParts(words.proved, { share: known.proved.toFixed(2), at: <Timestamp at={known.provedAt} as="day" /> })
        : words.notProved()}
      {known && known.limits.length > 0 && <em>. {known.limits.join(" ")}</em>}
    </>
  );
}
