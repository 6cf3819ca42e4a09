import { addSpan, parseSpan, type PlainDate } from "#base";
import type { StockPart } from "./part-state.ts";

/** Supposed from ordering to shelf where nobody said how long a part takes; common practice. */
export const SUPPOSED_LEAD = "7 days";

type Led = Pick<StockPart, "leadTime">;

/** True where nobody said how long the part takes from ordering to shelf: whatever rests on it says so. */
export function isLeadSupposed({ leadTime }: Led): boolean {
  return leadTime === undefined;
}

/** The day on which a part would be here that was ordered on `day`: by its lead time, else by the one supposed. */
export function hereIfOrdered({ leadTime = SUPPOSED_LEAD }: Led, day: PlainDate): PlainDate {
  return addSpan(day, parseSpan(leadTime, "leadTime"));
}
