import type { Fault } from "#base";
import { wrongLevel, wrongMeasures } from "#readiness";
import type { OnSceneInput } from "./on-scene-fields.ts";

type Timed = readonly { readonly at: number }[];

/**
 * Everything in a sheet that cannot be, by the limits the sheet itself is written by: QU-140 times out of order, QU-141
 * a measure of the boat, QU-142 a level above her coaming, QU-143 a time after now.
 */
export function faultsOf(input: OnSceneInput): readonly Fault[] {
  const { patches = [], now } = input;
  return [
    ...wrongMeasures(input.boat).map((wrong) => ({ code: "QU-141", ...wrong, field: `boat.${wrong.field}` })),
    ...levelFaults(input),
    ...[...soundingsOf(input), { field: "patches", times: patches }].flatMap(({ field, times }) => [
      ...orderFaults(times, field),
      ...futureFaults(times, field, now),
    ]),
  ];
}

/** Every list of soundings by its field: the first space's, then those of the further ones. */
function soundingsOf({ readings, spaces }: OnSceneInput) {
  const further = spaces.map((space, i) => ({ field: `spaces[${i}].readings`, times: space.readings ?? [] }));
  return [{ field: "readings", times: readings }, ...further];
}

function levelFaults(input: OnSceneInput): readonly Fault[] {
  const { boat, spaces } = input;
  if (wrongMeasures(boat).length > 0) return [];
  const levels = [
    ...soundingsOf(input).flatMap(({ field, times }) =>
      times.map(({ level }, i) => ({ level, field: `${field}[${i}].level` })),
    ),
    ...spaces.map(({ level = 0 }, i) => ({ level, field: `spaces[${i}].level` })),
  ];
  return levels.flatMap(({ level, field }) => {
    const wrong = wrongLevel(boat, level);
    return wrong ? [{ code: "QU-142", ...wrong, field }] : [];
  });
}

function orderFaults(times: Timed, field: string): readonly Fault[] {
  return times.flatMap(({ at }, i) => {
    const before = times[i - 1]?.at;
    if (before === undefined || at > before) return [];
    const remedy = at === before ? "Leave one of the two out." : "Sort by time.";
    return [timeFault("QU-140", `${field}[${i}].at`, at, `later than the one before, ${before} s`, remedy)];
  });
}

function futureFaults(times: Timed, field: string, now: number): readonly Fault[] {
  return times.flatMap(({ at }, i) => {
    const remedy = "Nothing is read in the future: look at the time and at now.";
    return at <= now ? [] : [timeFault("QU-143", `${field}[${i}].at`, at, `not after now, ${now} s`, remedy)];
  });
}

function timeFault(code: string, field: string, at: number, allowed: string, remedy: string): Fault {
  return { code, field, got: `${at} s`, allowed, remedy };
}
