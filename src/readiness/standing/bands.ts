import { addDays, type PlainDate } from "#base";
import type { Pattern } from "#kit";
import type { StationPolicy } from "../station/station-state.ts";
import { outlookOf, standingOn, type Outlook, type StandingOptions } from "./standing.ts";
import type { Band, KitState } from "../state.ts";

/** The first and last day looked at, inclusive. */
export interface DayRange {
  readonly from: PlainDate;
  readonly to: PlainDate;
}

/**
 * A kit's standing through a range of days if nobody does anything: bands without gaps, each as long as it can be.
 */
export function bandsOf(
  kit: KitState,
  pattern: Pattern,
  range: DayRange,
  policy: StationPolicy,
  options: StandingOptions = {},
): readonly Band[] {
  return bandsIn(outlookOf(kit, pattern, policy, options), range);
}

/** The bands of a kit that has been read once. */
export function bandsIn(outlook: Outlook, { from, to }: DayRange): readonly Band[] {
  const starts = turningDays(outlook, { from, to });
  const pieces = starts.map((start, index) => {
    const next = starts[index + 1];
    const { standing, because } = standingOn(outlook, start);
    return { from: start, to: next === undefined ? to : addDays(next, -1), standing, because: because[0]!.said };
  });
  return pieces.reduce<readonly Band[]>(joinBand, []);
}

/** Days of the range on which something begins or ceases to be in force, the first day of the range among them. */
function turningDays(outlook: Outlook, { from, to }: DayRange): readonly PlainDate[] {
  if (to < from) return [];
  const days = outlook.conditions.flatMap((condition) => [condition.from ?? from, condition.until ?? from]);
  return [...new Set([from, ...days.filter((day) => day > from && day <= to)])].toSorted();
}

function joinBand(bands: readonly Band[], next: Band): readonly Band[] {
  const last = bands.at(-1);
  if (!last || last.standing !== next.standing || JSON.stringify(last.because) !== JSON.stringify(next.because))
    return [...bands, next];
  return [...bands.slice(0, -1), { ...last, to: next.to }];
}
