import type { PlainDate } from "#base";
import type { Effect } from "#kit";
import type { Limit, Reason, StandingSaying } from "../state.ts";

/**
 * One thing that bears on a kit's standing, from a day on or always. A standing on a day is what the conditions in
 * force on that day add up to; everything else (lapse, bands, the year ahead) follows from the same list.
 */
export interface Condition {
  readonly bears: Effect | "open" | "away";
  readonly reason: Reason;
  /** Stated limit, where it bears as "limits". */
  readonly limit?: Limit;
  /** First day in force; absent: in force already, whatever the day. */
  readonly from?: PlainDate;
  /** First day no longer in force. */
  readonly until?: PlainDate;
  /** What will have ended on the day before `from`, as the lapse is told. */
  readonly ends?: StandingSaying;
  readonly restore?: Restoring;
}

/** What would lift a condition. */
export interface Restoring {
  readonly what: StandingSaying;
  /** Steps of the pattern to be done for it. */
  readonly steps: readonly string[];
  /** True where the container has to be opened, so also opened, restowed and sealed again. */
  readonly opens: boolean;
  /** Something was done about a finding, and only its proof is left: the lines that ask it, none where no line does. */
  readonly proveAt?: readonly number[];
}

/** True where a condition is in force on a day. */
export function isInForce(condition: Condition, day: PlainDate): boolean {
  const begun = condition.from === undefined || condition.from <= day;
  return begun && (condition.until === undefined || day < condition.until);
}
