import type { KitsNeededAnswer } from "#questions";
import { sayChance, sayMinutes } from "./say.ts";

/** "Take 3 kits" and why, in as few words as stand up. */
export interface KitsWords {
  /** The headline. */
  readonly take: string;
  /** Why taking them may be too late, where that is so. */
  readonly late?: LateWords;
  /** What is missing at this station, where anything is. */
  readonly short?: string;
  readonly why: string;
  readonly patch: string;
  readonly fuel: string;
}

/** That she may not be there any more. */
export interface LateWords {
  /** Likelier gone than not: a warning, not a remark. */
  readonly isWarning: boolean;
  readonly words: string;
}

/** Chances above this are sure enough to say no more about. */
const SURE = 0.9;
/** Below this she is likelier gone than not. */
const EVEN = 0.5;

/**
 * What the answer comes to. One kit more than the figures say, since kits fail and a second trip has lost boats.
 *
 * @param answer - to `kits-needed`
 * @param ready - kits ready at this station
 */
export function sayKits(answer: KitsNeededAnswer, ready: number): KitsWords {
  const wanted = kitsWanted(answer);
  const late = sayLate(answer.afloatOnArrival);
  const short = sayShort(ready, wanted, answer.byKits.length);
  return {
    take: sayTake(wanted, answer.byKits.length, late?.isWarning === true),
    ...(late && { late }),
    ...(short !== undefined && { short }),
    why: sayWhy(answer),
    patch: sayPatch(answer),
    fuel: sayFuel(answer.cansPerKit, wanted),
  };
}

/** How many to take, one for failing among them; undefined where none of those looked at is enough. */
function kitsWanted({ forGaining, forHolding }: KitsNeededAnswer): number | undefined {
  const enough = forGaining ?? forHolding;
  return enough === undefined ? undefined : enough + 1;
}

function sayTake(wanted: number | undefined, most: number, isLate: boolean): string {
  const patch = isLate ? "and a patch" : "or a patch";
  if (wanted === undefined) return `More than ${most} kits, ${patch}`;
  return isLate ? `Take ${sayKitCount(wanted)} ${patch}` : `Take ${sayKitCount(wanted)}`;
}

function sayLate(dry: number): LateWords | undefined {
  if (dry >= SURE) return undefined;
  const chance = `Chance that her deck edge is still dry when your first pump runs: ${sayChance(dry)}.`;
  const isWarning = dry < EVEN;
  const todo = "Ask for boats nearer. Have her people ready to leave her.";
  return { isWarning, words: isWarning ? `${chance} ${todo}` : chance };
}

function sayShort(ready: number, wanted: number | undefined, most: number): string | undefined {
  if (ready >= (wanted ?? most + 1)) return undefined;
  const here = ready === 0 ? "No kit is" : `${sayKitCount(ready)} ${ready === 1 ? "is" : "are"}`;
  const missing = wanted === undefined ? "more" : wanted - ready;
  return `${here} ready at this station; ${wanted ?? `more than ${most}`} wanted: ask another station for ${missing}.`;
}

function sayWhy({ forGaining, forHolding, afloatOnArrival, byKits }: KitsNeededAnswer): string {
  const most = byKits.at(-1)!;
  const kits = forGaining ?? forHolding;
  if (kits === undefined)
    return `Even ${most.kits} kits hold with a chance of only ${sayChance(most.holding)}. Slow the hole first; take all there are.`;
  const aim = forGaining === undefined ? "to hold the water, but not to gain on it," : "to gain on the water,";
  const ifAfloat = afloatOnArrival < SURE ? " if she still floats then" : "";
  return `${sayKitCount(kits)} ${aim} nine times in ten${ifAfloat}, and one more in case one fails.`;
}

function sayPatch({ forHoldingPatched, byKits }: KitsNeededAnswer): string {
  const row = byKits.find(({ kits }) => kits === forHoldingPatched);
  if (!row) return `With the hole halved, even ${byKits.length} kits may not hold: get people off early.`;
  const hold = `${sayKitCount(row.kits)} ${row.kits === 1 ? "holds" : "hold"}`;
  return `With the hole halved by a plug or a patch, ${hold} with a chance of ${sayChance(row.holdingPatched)}.`;
}

function sayFuel(cansPerKit: number, wanted: number | undefined): string {
  if (cansPerKit === 0) return "The tanks last: no cans needed.";
  const cans = cansPerKit === 1 ? "1 can" : `${cansPerKit} cans`;
  const all = wanted === undefined ? "" : `, ${cansPerKit * wanted} in all`;
  return `Fuel: ${cans} of 5 L with each kit${all}.`;
}

/** "1 kit", "3 kits". */
export function sayKitCount(count: number): string {
  return `${count} ${count === 1 ? "kit" : "kits"}`;
}

/** When pumping begins, and the chance that she is there to be pumped. */
export function sayArrival({ arrival, afloatOnArrival }: KitsNeededAnswer): string {
  return `Your first pump can be pumping in about ${sayMinutes(arrival)}. Chance that her deck edge is still dry then: ${sayChance(afloatOnArrival)}.`;
}
