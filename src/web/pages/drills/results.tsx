import type { ComparedFault, Finding } from "#readiness";
import { nameOf } from "#web/kit-view/at-hand.ts";
import type { DrillAtHand } from "./drill-at-hand.ts";

/** "Found by Ede Sorrell", or "Missed". */
export function FoundMark({ at, fault }: { readonly at: Pick<DrillAtHand, "view">; readonly fault: ComparedFault }) {
  const { found } = fault;
  return <span className="drill-result">{found ? `Found by ${nameOf(at.view, found.raised.by)}.` : "Missed."}</span>;
}

/** What a drill showed, in one line. */
export function sayResult(
  faults: readonly ComparedFault[],
  wrong: readonly Finding[],
  real: readonly Finding[],
): string {
  const found = faults.filter((fault) => fault.found).length;
  const more = [
    wrong.length > 0 ? `${wrong.length} false` : undefined,
    real.length > 0 ? `${real.length} real beside` : undefined,
  ].filter((one) => one !== undefined);
  return [`found ${found} of ${faults.length}`, ...more].join(", ");
}
