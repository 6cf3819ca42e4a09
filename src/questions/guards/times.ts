import type { Fault } from "#base";
import { sayDuration } from "#words";
import { faultOf } from "./guard-fault.ts";
import type { SayInstant } from "./one-clock.ts";

type Timed = readonly { readonly at: number }[];
interface Stretch {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/**
 * QU-140: times out of order, or two at one time.
 *
 * @param say - an instant as it was given
 */
export function outOfOrder(times: Timed, field: string, say: SayInstant): readonly Fault[] {
  return times.flatMap(({ at }, i) => {
    const before = times[i - 1]?.at;
    if (before === undefined || at > before) return [];
    const remedy = at === before ? ONE_OUT : SORT;
    return [faultOf("QU-140", `${field}[${i}].at`, say(at), `later than the one before, ${say(before)}`, remedy)];
  });
}

const SORT = "Sort by time; after midnight count on: 00:10 is 24:10.";

/** QU-143: a time after now. */
export function afterNow(times: Timed, field: string, now: number, say: SayInstant): readonly Fault[] {
  const remedy = "Nothing is read in the future: look at the time and at now.";
  return times.flatMap(({ at }, i) => (at <= now ? [] : [laterFault(`${field}[${i}].at`, say(at), say(now), remedy)]));
}

/** QU-143: pumping that begins after now. */
export function beginsAfterNow(
  stretches: readonly Stretch[],
  field: string,
  now: number,
  say: SayInstant,
): readonly Fault[] {
  const remedy = "Only what runs or ran is told: look at the time and at now, and tell a pump when it has started.";
  return stretches.flatMap(({ from = 0 }, i) =>
    from <= now ? [] : [laterFault(`${field}[${i}].from`, say(from), say(now), remedy)],
  );
}

function laterFault(field: string, at: string, now: string, remedy: string): Fault {
  return faultOf("QU-143", field, at, `not after now, ${now}`, remedy);
}

/** QU-140: two levels told of one time that are not the same. */
export function twoAtOnce(
  tellings: readonly { readonly ago: number; readonly water: number }[],
  field: string,
): readonly Fault[] {
  return tellings.flatMap(({ ago, water }, i) => {
    const before = tellings.slice(0, i).find((one) => one.ago === ago && one.water !== water);
    if (before === undefined) return [];
    return [
      faultOf("QU-140", `${field}[${i}].ago`, sayDuration(ago), "another time than that of the other level", ONE_OUT),
    ];
  });
}

const ONE_OUT = "Leave one of the two out.";

/**
 * QU-133: pumping that ends before it begins.
 *
 * @param end - the field's own name of the end
 */
export function endsBeforeItBegins(
  stretches: readonly Stretch[],
  field: string,
  end: "to" | "until",
  say: SayInstant,
): readonly Fault[] {
  return stretches.flatMap(({ from = 0, to }, i) => {
    if (to === undefined || to >= from) return [];
    return [faultOf("QU-133", `${field}[${i}].${end}`, say(to), `not before it begins, ${say(from)}`, CHECK)];
  });
}

const CHECK = "Check both times; after midnight count on: 00:10 is 24:10.";
/** Pumping that ended so long before the first reading is on another clock [s]. */
const A_DAY = 86_400;

/** QU-156: pumping that ended long before anything was read: it cannot be on the readings' clock. */
export function longBeforeReadings(
  stretches: readonly Stretch[],
  readings: Timed,
  field: string,
  say: SayInstant,
): readonly Fault[] {
  const first = readings[0]?.at;
  return stretches.flatMap(({ to }, i) => {
    if (first === undefined || to === undefined || to >= first - A_DAY) return [];
    const remedy =
      "Put readings and pumping on one clock, all times of day or all counted from one start, or leave it out.";
    return [
      faultOf("QU-156", `${field}[${i}].to`, say(to), `within a day before the first reading, ${say(first)}`, remedy),
    ];
  });
}
