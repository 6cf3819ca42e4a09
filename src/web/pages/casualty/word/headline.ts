import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import { sayDuration, sayLevelAbout } from "#words";
import type { Freshness } from "../soundings/freshness.ts";
import { FUEL, isAboveDeck, NOT_SOUNDED, sayVerdict, type VerdictWords } from "./verdict-words.ts";

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
export function headlineOf({ answer, error, freshness, isFuelSmelt, units }: HeadlineGiven): VerdictWords | undefined {
  if (isFuelSmelt) return FUEL;
  if (answer?.leave.kind === "now" && answer.leave.seen) return sayLeave(answer);
  if (freshness.last === undefined) return NOT_SOUNDED;
  if (freshness.isStale) return sayOld(answer, freshness);
  if (!answer) return error === undefined ? undefined : NOT_COMPUTED;
  return isLone(answer) ? sayLone(answer, units) : sayVerdict(answer);
}

/** One sounding shows neither rise nor fall: what is computed from it is what is thought of any hole. */
export function isLone(answer: OnSceneAnswer): boolean {
  return answer.word.kind === "one-sounding" || (answer.reading?.soundings === 1 && !isAboveDeck(answer));
}

/** What people saw outranks the stick: no word of it stands above a boat that lies over. */
function sayLeave({ leave, word }: OnSceneAnswer): VerdictWords {
  return {
    kind: "leave",
    word: "TIME TO LEAVE HER",
    chance: "",
    detail: "what is seen outranks the stick",
    why: [...leave.because, word.because],
  };
}

const NOT_COMPUTED: VerdictWords = {
  kind: "unknown",
  word: "NOT COMPUTED",
  chance: "",
  detail: "go on sounding; go by what you see",
};

/** How she was when last sounded is told by a tap, in the answer's own words. */
function sayOld(answer: OnSceneAnswer | undefined, { age }: Freshness): VerdictWords {
  const lastKnown = answer?.reading?.lastKnown;
  return {
    kind: "unknown",
    word: "NOT KNOWN",
    chance: "",
    detail: `last sounding ${sayDuration(age / 1000, "elapsed")} ago. Sound now`,
    ...(lastKnown !== undefined && { why: [lastKnown] }),
  };
}

function sayLone({ reading, hull }: OnSceneAnswer, units: UnitSystem): VerdictWords {
  const end = reading?.fan.at(-1);
  const [low, high] = [end?.p05 ?? 0, end?.p95 ?? hull.depth].map((level) =>
    level < hull.depth ? sayLevelAbout(level, units) : "her deck edge",
  );
  const range = low === high ? `up to ${high}` : `from ${low} to ${high}`;
  return {
    kind: "unknown",
    word: "ONE SOUNDING",
    chance: "",
    detail: "sound again",
    why: [`One sounding shows neither rise nor fall: in an hour anything ${range}.`],
  };
}
