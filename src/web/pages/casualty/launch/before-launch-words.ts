import type { KitsNeededAnswer } from "#questions";
import { chanceEnds, hundredthsOf, sayDuration, type Words } from "#words";
import { ON_SCENE } from "./before-launch.ts";
import type { UsableKit } from "./usable-kits.ts";

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

type Messages = Words["launchKits"];

/**
 * What the answer comes to: kits now, a patch where the first boat cannot hold her without, kits to follow.
 *
 * @param answer - to `kits-needed`
 * @param isFuelKnown - false where no kit was named whose tank and burn are known
 */
export function sayKits(answer: KitsNeededAnswer, words: Messages, isFuelKnown: boolean): KitsWords {
  const late = sayLate(answer, words);
  const short = sayShort(answer, words);
  return {
    take: sayTake(answer, late?.isWarning === true, words),
    ...(late && { late }),
    ...(short !== undefined && { short }),
    why: sayWhy(answer, words),
    patch: sayPatch(answer, words),
    fuel: sayFuel(answer, words, isFuelKnown),
  };
}

/** Whether no kit that can be used is known of: none goes and none follows. */
function isWithoutPump({ plan, kits }: Pick<KitsNeededAnswer, "plan" | "kits">): boolean {
  return plan.now === 0 && kits.length === 0;
}

function sayTake({ plan, byKits, kits }: KitsNeededAnswer, isLate: boolean, words: Messages): string {
  const { now: count, patch, follow, enough } = plan;
  const more = enough ? words.toFollow({ count: follow }) : words.moreToFollow();
  if (isWithoutPump({ plan, kits })) return words.noPump();
  if (count === 0) return words.takeNone({ more });
  if (!enough && count === byKits.length) return words.takeMoreThan({ count });
  if (patch) return follow === 0 ? words.takeAndPatch({ count }) : words.takeNowPatch({ count, more });
  if (follow > 0) return isLate ? words.takeNowAndPatch({ count, more }) : words.takeNow({ count, more });
  return isLate ? words.takeAndPatch({ count }) : words.take({ count });
}

/** The chance is one of the first boat's pump: where she brings none there is none to tell. */
function sayLate(
  { plan, afloatOnArrival: dry, afloatSpread }: Pick<KitsNeededAnswer, "plan" | "afloatOnArrival" | "afloatSpread">,
  words: Messages,
): LateWords | undefined {
  if (plan.now === 0 || dry >= SURE) return undefined;
  const chance = sayRange(afloatSpread, words);
  const isWarning = dry < EVEN;
  return { isWarning, words: isWarning ? words.lateWarning({ chance }) : words.late({ chance }) };
}

/** Kits that follow: our own that lie elsewhere first, the rest from another station. */
function sayShort({ plan: { now, follow, enough }, kits }: KitsNeededAnswer, words: Messages): string | undefined {
  if (follow === 0 && enough) return undefined;
  const rest = kits.slice(now);
  const own = rest.slice(0, enough ? follow : rest.length);
  const missing = follow - own.length;
  const clauses = [
    now === 0 ? words.firstNone() : words.firstKits({ count: now }),
    own.length > 0 ? words.thenKits({ kits: own.map(({ name }) => name).join(", ") }) : undefined,
    enough ? undefined : words.askAll(),
    enough && missing > 0 ? words.askFor({ count: missing }) : undefined,
  ].filter((clause) => clause !== undefined);
  return words.sentence({ clauses: clauses.reduce((before, next) => words.next({ before, next })) });
}

function sayWhy(answer: KitsNeededAnswer, words: Messages): string {
  const { forGaining, forHolding, afloatOnArrival, byKits, plan } = answer;
  const most = byKits.at(-1)!;
  const count = forGaining ?? forHolding;
  if (count === undefined) return words.whyNone({ count: most.kits, chance: sayRange(most.spreads.holding, words) });
  const isAfloat = plan.now > 0 && afloatOnArrival >= SURE;
  const gain = isAfloat ? words.gain : words.gainIfAfloat;
  const hold = isAfloat ? words.hold : words.holdIfAfloat;
  const why = forGaining === undefined ? hold({ count }) : gain({ count });
  return count === 1 ? words.alone({ why }) : why;
}

function sayPatch({ forHoldingPatched, byKits }: KitsNeededAnswer, words: Messages): string {
  const row = byKits.find(({ kits }) => kits === forHoldingPatched);
  if (!row) return words.patchNone({ count: byKits.length });
  return words.patchHolds({ count: row.kits, chance: sayRange(row.spreads.holdingPatched, words) });
}

/** What is in the tanks nobody has told: they are counted as full, and that is said. */
function sayFuel(
  { cansPerKit, plan: { now, follow } }: KitsNeededAnswer,
  words: Messages,
  isFuelKnown: boolean,
): string {
  if (cansPerKit === 0) return words.noCans({ duration: sayDuration(ON_SCENE, "needed") });
  const cans = { count: cansPerKit, total: cansPerKit * (now + follow) };
  return isFuelKnown ? words.cans(cans) : words.cansGuessed(cans);
}

type Starting = Pick<KitsNeededAnswer["kits"][number], "starts" | "startsSpread">;

/** The chance that a kit starts and gives water, its range, and the starts that it rests on. */
export function sayStarts({ starts, startsSpread }: Starting, runs: UsableKit["runs"], words: Words["launch"]): string {
  const [low, high] = [startsSpread.p05, startsSpread.p95].map((chance) => Math.round(100 * chance));
  const rests = runs && runs.of > 0 ? words.startsBy({ good: runs.good, of: runs.of }) : words.startsUsual();
  return words.starts({ chance: words.inHundred({ count: hundredthsOf(starts) }), low: low!, high: high!, rests });
}

/** When pumping begins, and the chance that she is there to be pumped, each with its range; neither where no pump goes. */
export function sayArrival(answer: KitsNeededAnswer, words: Messages): string {
  const { plan, arrivalSpread, afloatSpread } = answer;
  if (isWithoutPump(answer)) return words.arrivalNone();
  if (plan.now === 0) return words.arrivalFollows();
  return words.arrival({ duration: sayTimes(arrivalSpread, words), chance: sayRange(afloatSpread, words) });
}

type Spread = KitsNeededAnswer["afloatSpread"];

/** "30 to 45 in 100": a chance by what it lies between, nine times in ten. */
export function sayRange({ p05, p95 }: Spread, words: Messages): string {
  const [low, high] = chanceEnds(p05, p95);
  if (low <= 0) return high >= 100 ? words.anyChance() : words.lessThan({ high });
  if (high >= 100) return words.moreThan({ low: Math.min(99, low) });
  return low === high ? words.inHundred({ count: low }) : words.between({ low, high });
}

/** "35 to 60 min". */
function sayTimes({ p05, p95 }: Spread, words: Messages): string {
  const [from, to] = [p05, p95].map((time) => sayDuration(time, "estimate"));
  if (from === to) return from!;
  const [figure, unit] = from!.split("\u00a0");
  const isOneUnit = to!.split("\u00a0").length === 2 && unit === to!.split("\u00a0")[1];
  return words.duration({ from: isOneUnit ? figure! : from!, to: to! });
}
