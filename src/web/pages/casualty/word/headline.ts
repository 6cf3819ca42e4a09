import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import { sayDuration, sayLevelAbout, type Words } from "#words";
import type { Freshness } from "../soundings/freshness.ts";
import { fuelSmelt, isAboveDeck, notSounded, sayVerdict, type VerdictWords } from "./verdict-words.ts";

type Messages = Words["sheetWord"];

/** What the line at the top goes by. */
export interface HeadlineGiven {
  /** As she is now by the soundings. */
  readonly answer: OnSceneAnswer | undefined;
  /** Why there is no newer answer. */
  readonly error: unknown;
  readonly freshness: Freshness;
  readonly isFuelSmelt: boolean;
  readonly units: UnitSystem;
}

/**
 * The line at the top: fuel before all else, then signs to leave her that people saw, then that nothing is known any
 * more, then what the soundings say.
 *
 * @returns undefined while there is nothing to say yet
 */
export function headlineOf(given: HeadlineGiven, words: Messages): VerdictWords | undefined {
  const { answer, error, freshness, isFuelSmelt, units } = given;
  if (isFuelSmelt) return fuelSmelt(words);
  if (answer?.leave.kind === "now" && answer.leave.seen) return sayLeave(answer, words);
  if (freshness.last === undefined) return notSounded(words);
  if (freshness.isStale) return sayOld(answer, freshness, words);
  if (!answer) return error === undefined ? undefined : notComputed(words);
  return isLone(answer) ? sayLone(answer, units, words) : sayVerdict(answer, units, words);
}

/** One sounding shows neither rise nor fall: what is computed from it is what is thought of any hole. */
export function isLone(answer: OnSceneAnswer): boolean {
  return answer.word.kind === "one-sounding" || (answer.reading?.soundings === 1 && !isAboveDeck(answer));
}

/** What people saw outranks the stick: no word of it stands above a boat that lies over. */
function sayLeave({ leave, word }: OnSceneAnswer, words: Messages): VerdictWords {
  return {
    kind: "leave",
    word: words.timeToLeave(),
    chance: "",
    detail: words.seenOutranks(),
    why: [...leave.because, words.leaveNowMore(), word.because],
  };
}

function notComputed(words: Messages): VerdictWords {
  return { kind: "unknown", word: words.notComputedWord(), chance: "", detail: words.goBySight() };
}

/** How she was when last sounded is told by a tap, in the answer's own words. */
function sayOld(answer: OnSceneAnswer | undefined, { age }: Freshness, words: Messages): VerdictWords {
  const lastKnown = answer?.reading?.lastKnown;
  return {
    kind: "unknown",
    word: words.notKnown(),
    chance: "",
    detail: words.lastAgo({ duration: sayDuration(age / 1000, "elapsed") }),
    ...(lastKnown !== undefined && { why: [lastKnown] }),
  };
}

function sayLone({ reading, hull }: OnSceneAnswer, units: UnitSystem, words: Messages): VerdictWords {
  const end = reading?.fan.at(-1);
  const say = (level: number) => (level < hull.depth ? sayLevelAbout(level, units) : words.herDeckEdge());
  const [low, high] = [say(end?.p05 ?? 0), say(end?.p95 ?? hull.depth)];
  return {
    kind: "unknown",
    word: words.oneSounding(),
    chance: "",
    detail: words.soundAgain(),
    why: [low === high ? words.loneUpTo({ high }) : words.loneBetween({ low, high })],
  };
}
