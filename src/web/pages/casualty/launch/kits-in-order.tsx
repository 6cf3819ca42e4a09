import { sayChance, sayDuration, sayFlow } from "#words";
import type { KitsNeededAnswer } from "#questions";
import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import type { KitsAtHand, UsableKit } from "./usable-kits.ts";

interface KitsInOrderProps {
  readonly answer: KitsNeededAnswer;
  readonly atHand: KitsAtHand;
}

type Counted = KitsNeededAnswer["kits"][number];

/** Which kits, by name and in the order to take them; then those that follow, and those that stay with the reason. */
export function KitsInOrder({ answer: { kits, plan }, atHand }: KitsInOrderProps) {
  const taken = kits.slice(0, plan.now);
  const rest = kits.slice(plan.now);
  return (
    <>
      {taken.length > 0 && <KitList title="Take, in this order" kits={taken} atHand={atHand} />}
      {rest.length > 0 && <KitList title="Then" kits={rest} atHand={atHand} isAfter />}
      {kits.length === 0 && <p>No kit of this station can be used on her tonight.</p>}
      {atHand.back.length > 0 && (
        <details className="casualty-more">
          <summary>{atHand.back.length === 1 ? "1 kit stays" : `${atHand.back.length} kits stay`}, and why</summary>
          <ul className="casualty-list">
            {atHand.back.map(({ name, why }) => (
              <li key={name}>
                <strong>{name}</strong>: {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

interface KitListProps extends Pick<KitsInOrderProps, "atHand"> {
  readonly title: string;
  readonly kits: readonly Counted[];
  readonly isAfter?: boolean;
}

function KitList({ title, kits, atHand, isAfter = false }: KitListProps) {
  const lines = kits.map((kit) => (
    <li key={kit.name}>
      <KitLine kit={kit} known={atHand.usable.find(({ name }) => name === kit.name)} />
    </li>
  ));
  if (!isAfter) {
    return (
      <div>
        <strong>{title}</strong>
        <ol className="launch-kits">{lines}</ol>
      </div>
    );
  }
  return (
    <details className="casualty-more">
      <summary>
        {title}: {kits.map(({ name }) => name).join(", ")}
      </summary>
      <ul className="launch-kits">{lines}</ul>
    </details>
  );
}

function KitLine({ kit, known }: { readonly kit: Counted; readonly known: UsableKit | undefined }) {
  const { units } = usePreferences();
  const { p05, p50, p95 } = kit.moves;
  return (
    <>
      <strong>{kit.name}</strong>
      {known && `, ${known.placeName}`}: about {sayFlow(p50, units)} ({sayFlow(p05, units)} to {sayFlow(p95, units)});
      starts {sayChance(kit.starts)}
      {known?.prime !== undefined && `; primed in ${sayDuration(known.prime)}`}
      {known?.provedAt !== undefined && known.proved !== undefined ? (
        <>
          ; proved {known.proved.toFixed(2)} of stated <Timestamp at={known.provedAt} as="day" />
        </>
      ) : (
        "; not proved"
      )}
      {known && known.limits.length > 0 && <em>. {known.limits.join(" ")}</em>}
    </>
  );
}
