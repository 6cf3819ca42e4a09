import { readSheet, type SheetPumpRun, type SheetCase, type SheetReading, type SoundedSpace } from "#flooding";
import { omitMissing } from "../flooding/casualty-input.ts";
import type { OnSceneInput } from "./on-scene-fields.ts";
import { signsTold } from "./on-scene-signs.ts";

/** Soundings before so many of the last say little of hole and pumps now. */
const MOST_READINGS = 24;

/**
 * What the sheet says of the first space: one belief of hole, pumps and hull, through every told change.
 *
 * @param input - at least one reading
 * @param space - being sounded
 */
export function readScene(input: OnSceneInput, space: SoundedSpace): SheetReading {
  return readSheet(caseOf(input, space), omitMissing({ secondPump: input.secondPump }));
}

function caseOf(input: OnSceneInput, space: SoundedSpace): SheetCase {
  const { pumping, patches = [], hole, boat, now } = input;
  const lanes = lanesOf(pumping);
  const diameter = hole?.diameter;
  return {
    space,
    readings: input.readings.slice(-MOST_READINGS),
    runs: pumping.flatMap((run, k) => runOf(run, lanes.numbers[k]!)),
    pumps: lanes.ids.length,
    patches,
    signs: signsTold(input).flatMap(({ at, pump, sign }) => {
      const number = pump === undefined ? undefined : lanes.ids.indexOf(pump);
      return number === -1 ? [] : [{ at, sign, ...omitMissing({ pump: number }) }];
    }),
    ...(diameter !== undefined && { holeTold: (Math.PI / 4) * diameter ** 2 }),
    isMeasured: boat.beam !== undefined,
    now,
  };
}

function runOf({ from, to, flow }: OnSceneInput["pumping"][number], pump: number): SheetPumpRun[] {
  return to !== undefined && to <= from ? [] : [{ from, flow, pump, ...(to !== undefined && { to }) }];
}

/** The pumps there are: an id where one was told, else nothing; and by run the number of its pump. */
export interface Lanes {
  readonly ids: readonly (string | undefined)[];
  readonly numbers: readonly number[];
}

/**
 * Which run is which pump's: runs with one id are one pump's; of those without, two that overlap are of two pumps, and
 * one that follows another may be the same.
 *
 * @param pumping - in any order
 */
export function lanesOf(pumping: OnSceneInput["pumping"]): Lanes {
  const ids: (string | undefined)[] = [];
  const free: number[] = [];
  const numbers = pumping.map(() => 0);
  const inOrder = pumping.map((run, k) => ({ ...run, k })).toSorted((a, b) => a.from - b.from);
  for (const { pump, from, to = Infinity, k } of inOrder) {
    const own = pump === undefined ? ids.findIndex((id, n) => id === undefined && free[n]! <= from) : ids.indexOf(pump);
    const number = own < 0 ? ids.push(pump) - 1 : own;
    free[number] = Math.max(free[number] ?? 0, to);
    numbers[k] = number;
  }
  return { ids, numbers };
}
