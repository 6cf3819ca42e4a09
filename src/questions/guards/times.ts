import type { Fault } from "#base";
import { faultOf } from "./guard-fault.ts";

type Timed = readonly { readonly at: number }[];
interface Stretch {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** QU-140: times out of order, or two at one time. */
export function outOfOrder(times: Timed, field: string): readonly Fault[] {
  return times.flatMap(({ at }, i) => {
    const before = times[i - 1]?.at;
    if (before === undefined || at > before) return [];
    const remedy = at === before ? "Leave one of the two out." : SORT;
    return [
      faultOf("QU-140", `${field}[${i}].at`, seconds(at), `later than the one before, ${seconds(before)}`, remedy),
    ];
  });
}

const SORT = "Sort by time; after midnight count on: 00:10 is 24:10.";

/** QU-143: a time after now. */
export function afterNow(times: Timed, field: string, now: number): readonly Fault[] {
  return times.flatMap(({ at }, i) => {
    if (at <= now) return [];
    const remedy = "Nothing is read in the future: look at the time and at now.";
    return [faultOf("QU-143", `${field}[${i}].at`, seconds(at), `not after now, ${seconds(now)}`, remedy)];
  });
}

/**
 * QU-133: pumping that ends before it begins.
 *
 * @param end - the field's own name of the end
 */
export function endsBeforeItBegins(
  stretches: readonly Stretch[],
  field: string,
  end: "to" | "until",
): readonly Fault[] {
  return stretches.flatMap(({ from = 0, to }, i) => {
    if (to === undefined || to >= from) return [];
    return [faultOf("QU-133", `${field}[${i}].${end}`, seconds(to), `not before it begins, ${seconds(from)}`, CHECK)];
  });
}

const CHECK = "Check both times; after midnight count on: 00:10 is 24:10.";
/** Pumping that ended so long before the first reading is on another clock [s]. */
const A_DAY = 86_400;

/** QU-156: pumping that ended long before anything was read: it cannot be on the readings' clock. */
export function longBeforeReadings(stretches: readonly Stretch[], readings: Timed, field: string): readonly Fault[] {
  const first = readings[0]?.at;
  return stretches.flatMap(({ to }, i) => {
    if (first === undefined || to === undefined || to >= first - A_DAY) return [];
    const remedy =
      "Put readings and pumping on one clock, all times of day or all counted from one start, or leave it out.";
    return [
      faultOf(
        "QU-156",
        `${field}[${i}].to`,
        seconds(to),
        `within a day before the first reading, ${seconds(first)}`,
        remedy,
      ),
    ];
  });
}

function seconds(at: number): string {
  return `${at} s`;
}
