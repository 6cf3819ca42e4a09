import { sayCount } from "#base";
import type { KitsNeededAnswer } from "#questions";
import { sayChance, sayDuration } from "#words";

/** "Take 3 kits" and why, in as few words as stand up. */
export interface KitsWords {
  /** The headline. */
  readonly take: string;
  /** Why taking them may be too late, where that is so. */
  readonly late?: LateWords;
  /** What is missing, and from where it can come, where anything is. */
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
 * What the answer comes to: kits now, a patch where the first boat cannot hold her without, kits to follow.
 *
 * @param answer - to `kits-needed`
 */
export function sayKits(answer: KitsNeededAnswer): KitsWords {
  const late = sayLate(answer.afloatOnArrival);
  const short = sayShort(answer);
  return {
    take: sayTake(answer, late?.isWarning === true),
    ...(late && { late }),
    ...(short !== undefined && { short }),
    why: sayWhy(answer),
    patch: sayPatch(answer),
    fuel: sayFuel(answer),
  };
}

function sayTake({ plan: { now, patch, follow, enough }, byKits }: KitsNeededAnswer, isLate: boolean): string {
  const more = enough ? `${follow} to follow` : "more to follow";
  if (now === 0) return `No kit to take: a patch, ${more}`;
  if (!enough && now === byKits.length) return `More than ${sayCount(now, "kit")}, and a patch`;
  if (patch) return follow === 0 ? `Take ${sayKitCount(now)} and a patch` : `Take ${now} now, a patch, ${more}`;
  if (follow > 0) return `Take ${now} now, ${more}${isLate ? ", and a patch" : ""}`;
  return `Take ${sayKitCount(now)}${isLate ? " and a patch" : ""}`;
}

function sayLate(dry: number): LateWords | undefined {
  if (dry >= SURE) return undefined;
  const chance = `Chance that her deck edge is still dry when your first pump runs: ${sayChance(dry)}.`;
  const isWarning = dry < EVEN;
  const todo = "Ask for boats nearer. Have her people ready to leave her.";
  return { isWarning, words: isWarning ? `${chance} ${todo}` : chance };
}

/** Kits that follow: our own that lie elsewhere first, the rest from another station. */
function sayShort({ plan: { now, follow, enough }, kits }: KitsNeededAnswer): string | undefined {
  if (follow === 0 && enough) return undefined;
  const first = now === 0 ? "No kit can go with the first boat" : `${sayKitCount(now)} with the first boat`;
  const rest = kits.slice(now);
  const own = rest.slice(0, enough ? follow : rest.length);
  const missing = follow - own.length;
  const after = own.length > 0 ? `; then ${own.map(({ name }) => name).join(", ")}` : "";
  const ask = !enough
    ? "; ask another station for all it has"
    : missing > 0
      ? `; ask another station for ${missing}`
      : "";
  return `${first}${after}${ask}.`;
}

function sayWhy({ forGaining, forHolding, afloatOnArrival, byKits }: KitsNeededAnswer): string {
  const most = byKits.at(-1)!;
  const kits = forGaining ?? forHolding;
  if (kits === undefined)
    return `Even ${sayCount(most.kits, "kit")} ${most.kits === 1 ? "holds" : "hold"} with a chance of only ${sayChance(most.holding)}. Slow the hole first; take all there are.`;
  const aim = forGaining === undefined ? "to hold the water, but not to gain on it," : "to gain on the water,";
  const ifAfloat = afloatOnArrival < SURE ? " if she still floats then" : "";
  const alone = kits === 1 ? " Two all the same: one that fails leaves none." : "";
  return `${sayKitCount(kits)} ${aim} nine times in ten${ifAfloat}, kits that fail to start counted in.${alone}`;
}

function sayPatch({ forHoldingPatched, byKits }: KitsNeededAnswer): string {
  const row = byKits.find(({ kits }) => kits === forHoldingPatched);
  if (!row) return `With the hole halved, even ${sayCount(byKits.length, "kit")} may not hold: get people off early.`;
  const hold = `${sayKitCount(row.kits)} ${row.kits === 1 ? "holds" : "hold"}`;
  return `With the hole halved by a plug or a patch, ${hold} with a chance of ${sayChance(row.holdingPatched)}.`;
}

function sayFuel({ cansPerKit, plan: { now, follow } }: KitsNeededAnswer): string {
  if (cansPerKit === 0) return "The tanks last: no cans needed.";
  const cans = sayCount(cansPerKit, "can");
  return `Fuel: ${cans} of 5 L with each kit, ${cansPerKit * (now + follow)} in all.`;
}

/** "1 kit", "3 kits". */
export function sayKitCount(count: number): string {
  return sayCount(count, "kit");
}

/** When pumping begins, and the chance that she is there to be pumped. */
export function sayArrival({ arrival, afloatOnArrival }: KitsNeededAnswer): string {
  return `Your first pump can be pumping in about ${sayDuration(arrival, "estimate")}. Chance that her deck edge is still dry then: ${sayChance(afloatOnArrival)}.`;
}
