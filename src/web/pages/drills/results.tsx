import type { ComparedFault, Comparison } from "#readiness";
import { nameOf } from "#web/kit-view/at-hand.ts";
import type { DrillAtHand } from "./drill-at-hand.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

/** "Found by Ede Sorrell", or "Missed". */
export function FoundMark({ at, fault }: { readonly at: Pick<DrillAtHand, "view">; readonly fault: ComparedFault }) {
  const words = useWords("drills");
  const { found } = fault;
  return (
    <span className="drill-result">
      {found ? words.foundBy({ who: nameOf(at.view, found.raised.by) }) : words.missed()}
    </span>
  );
}

/** What a drill showed, in one line. */
export function sayResult({ faults, wrong, real }: Comparison, words: Words["drills"]): string {
  const found = faults.filter((fault) => fault.found).length;
  return words.result({ found, planted: faults.length, wrong: wrong.length, real: real.length });
}
