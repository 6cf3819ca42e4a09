import type { Demand } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { sayOutcome } from "#web/kit-view/starts/start-words.ts";
import { Timestamp } from "#web/parts/index.ts";

/** Every time it was asked to start, newest first. */
export function Demands({ demands }: { readonly demands: readonly Demand[] }) {
  const words = useWords("starts");
  if (demands.length === 0) return null;
  return (
    <ul className="kit-demands">
      {demands.toReversed().map(({ at, on, failed }) => (
        <li key={`${on} ${at}`}>
          <Timestamp at={at} as="day" />
          {words.startedAt({
            where: on === "casualty" ? words.onCasualty() : words.inTurnaround(),
            outcome: sayOutcome(failed, words),
          })}
        </li>
      ))}
    </ul>
  );
}
