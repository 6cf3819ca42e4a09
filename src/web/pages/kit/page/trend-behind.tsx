import { usePreferences } from "#web/theme/index.ts";
import { useWords } from "#web/language/index.ts";
import { stepOfCheck } from "#kit";
import type { Trend } from "#readiness";
import { findingsByMode, trendSignal, type TrendCause } from "#station";
import { useMemo } from "react";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayCause, sayCauseBasis, saySince } from "./trend-words.ts";

interface WhatIsBehindProps {
  readonly trend: Trend;
  readonly at: KitAtHand;
}

/** Of a trend that gets worse: since when, the likeliest items, and the check that would tell. Nothing of any other. */
export function WhatIsBehind({ trend, at: { view, kit, pattern } }: WhatIsBehindProps) {
  const words = useWords("kitHistory");
  const trendWords = useWords("trends");
  const { units } = usePreferences();
  const signal = useMemo(() => {
    const found = findingsByMode([...view.kits, ...view.retired], kit.pattern);
    return trendSignal(trend, pattern, found);
  }, [trend, pattern, kit.pattern, view.kits, view.retired]);
  if (!signal) return null;
  return (
    <>
      <p>
        <strong>{saySince(signal, units, trendWords)}</strong>
      </p>
      {signal.likely.length > 0 && (
        <details className="kit-table" open>
          <summary>{words.behind()}</summary>
          <ul className="kit-behind">
            {signal.likely.map((cause) => (
              <li key={cause.mode.id}>
                {sayCause(cause, trendWords)}. <Telling cause={cause} pattern={pattern} />
              </li>
            ))}
          </ul>
          <p className="quiet">{sayCauseBasis(signal, trendWords)}</p>
        </details>
      )}
    </>
  );
}

/** The first check that finds it, with its line. */
function Telling({
  cause: { checks },
  pattern,
}: {
  readonly cause: TrendCause;
  readonly pattern: KitAtHand["pattern"];
}) {
  const words = useWords("kitHistory");
  const [check] = checks;
  if (!check) return words.noCheckTells();
  const step = stepOfCheck(pattern, check.id);
  return step ? words.lineCheck({ line: step.line, ask: check.ask }) : check.ask;
}
