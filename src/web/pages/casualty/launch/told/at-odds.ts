import type { UnitSystem } from "#base";
import type { Call } from "../before-launch.ts";
import { sayRise, sayTyped } from "../sizes.ts";

/** What was told and does not go together, by the field it is said at. What was told stays as it was told. */
export interface AtOdds {
  readonly water?: string;
  readonly rising?: string;
}

type Told = Pick<Call, "tellings" | "rising">;

/**
 * Remarks on what two people, or one in fright, told against each other: which of the two is counted with, and what to
 * ask. Nothing here refuses anything.
 *
 * @param call - levels over the floor [m] with their times, and the rise [m/s], below 0 where it falls
 */
export function atOddsIn(call: Told, units: UnitSystem): AtOdds {
  const water = dryAfterWater(call, units);
  const rising = riseAtOdds(call, units);
  return { ...(water !== undefined && { water }), ...(rising !== undefined && { rising }) };
}

function dryAfterWater({ tellings = [] }: Told, units: UnitSystem): string | undefined {
  const before = tellings.slice(0, -1).findLast(({ water }) => water > 0);
  if (tellings.at(-1)?.water !== 0 || !before) return undefined;
  return `Dry now, and ${sayTyped("water", before.water, units)} before. Was it pumped out, or is it another space? Both stand.`;
}

function riseAtOdds({ tellings = [], rising }: Told, units: UnitSystem): string | undefined {
  const [first, last] = [tellings[0], tellings.at(-1)];
  if (rising === undefined) return undefined;
  if (!first || !last) return rising < 0 ? UNPUMPED : undefined;
  const rise = last.water - first.water;
  if (rise * rising < 0) return againstLevels(first.water, last.water, rising, units);
  if (last.water > 0 || rise !== 0) return rising < 0 ? UNPUMPED : undefined;
  const word = rising < 0 ? "a level that falls" : "a rise";
  return `Dry is told, and ${word} too. Ask for the level at one mark, and again in two minutes. Both stand.`;
}

/** Nobody told of a pump, and water does not go by itself. */
const UNPUMPED = "A level falls only while she is pumped or bailed. Ask with what, and for how long that lasts.";

function againstLevels(first: number, last: number, rising: number, units: UnitSystem): string {
  const levels = `The levels told ${last < first ? "fall" : "rise"}, ${sayTyped("water", first, units)} to ${sayTyped("water", last, units)}`;
  const told = rising < 0 ? "a fall" : `a rise of ${sayRise(rising, units)}`;
  return `${levels}; ${told} is told too. The levels are counted with, both stand. Ask again: same mark?`;
}
