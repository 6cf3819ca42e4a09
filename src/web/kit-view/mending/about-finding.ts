import type { Finding } from "#readiness";
import { useKept, type Kept } from "#web/act/use-kept.ts";
import type { KitAtHand } from "../at-hand.ts";
import type { KitActs } from "#web/act/acts.ts";

/** One finding and the kit it is on. */
export interface AboutFinding {
  readonly at: KitAtHand;
  readonly finding: Finding;
}

/** The same, where something can be done about it. */
export interface ActingOnFinding extends AboutFinding {
  readonly acts: KitActs;
}

/**
 * What is half said of mending a finding, kept on this device until it is saved: an alarm that comes up takes nothing that
 * was typed. Once something was done the next remedy begins empty.
 *
 * @param part - of the form
 */
export function useMending<Value extends object>({ id, remedies }: Finding, part: string, empty: Value): Kept<Value> {
  return useKept(`mend.${id}.${remedies.length}.${part}`, empty);
}
