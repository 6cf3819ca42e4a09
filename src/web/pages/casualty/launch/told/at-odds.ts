import type { Words } from "#words";
import type { UnitSystem } from "#base";
import type { Call } from "../before-launch.ts";
import { sayRise, sayTyped } from "../sizes.ts";

/** What was told and does not go together, by the field it is said at. What was told stays as it was told. */
export interface AtOdds {
  readonly water?: string;
  readonly rising?: string;
}

type ToldWords = Words["launchTold"];
type Told = Pick<Call, "tellings" | "rising">;

/**
 * Remarks on what two people, or one in fright, told against each other: which of the two is counted with, and what to
 * ask. Nothing here refuses anything.
 *
 * @param call - levels over the floor [m] with their times, and the rise [m/s], below 0 where it falls
 */
export function atOddsIn(call: Told, units: UnitSystem, words: ToldWords): AtOdds {
  const water = dryAfterWater(call, units, words);
  const rising = riseAtOdds(call, units, words);
  return { ...(water !== undefined && { water }), ...(rising !== undefined && { rising }) };
}

function dryAfterWater({ tellings = [] }: Told, units: UnitSystem, words: ToldWords): string | undefined {
  const before = tellings.slice(0, -1).findLast(({ water }) => water > 0);
  if (tellings.at(-1)?.water !== 0 || !before) return undefined;
  return words.dryNow({ before: sayTyped("water", before.water, units) });
}

function riseAtOdds({ tellings = [], rising }: Told, units: UnitSystem, words: ToldWords): string | undefined {
  const [first, last] = [tellings[0], tellings.at(-1)];
  if (rising === undefined) return undefined;
  if (!first || !last) return rising < 0 ? words.unpumped() : undefined;
  const rise = last.water - first.water;
  if (rise * rising < 0) return againstLevels(first.water, last.water, rising, units, words);
  if (last.water > 0 || rise !== 0) return rising < 0 ? words.unpumped() : undefined;
  return rising < 0 ? words.dryFall() : words.dryRise();
}

function againstLevels(first: number, last: number, rising: number, units: UnitSystem, words: ToldWords): string {
  const levels = { first: sayTyped("water", first, units), last: sayTyped("water", last, units) };
  if (last > first) return words.riseAgainst(levels);
  return words.fallAgainst({ ...levels, rise: sayRise(rising, units, words) });
}
