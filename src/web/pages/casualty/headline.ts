import type { UnitSystem } from "#base";
import { sayAge, type OnSceneAnswer } from "#questions";
import type { Freshness } from "./freshness.ts";
import { sayClock, sayLevelAbout } from "./say.ts";
import { isAboveDeck, NOT_SOUNDED, sayVerdict, type VerdictWords } from "./verdict-words.ts";

/** What the line at the top goes by. */
export interface HeadlineGiven {
  /** As she is now by the soundings; where the last is too old, as she was then. */
  readonly answer: OnSceneAnswer | undefined;
  /** Why there is no newer answer. */
  readonly error: unknown;
  readonly freshness: Freshness;
  readonly isFuelSmelt: boolean;
  /** The next refuelling [ms], if one is known. */
  readonly refuel: number | undefined;
  /** The next sounding [ms], as the answer has it. */
  readonly nextSounding: number | undefined;
  /** [ms] */
  readonly now: number;
  readonly units: UnitSystem;
}

/**
 * The line at the top: fuel before all else, then that nothing is known any more, then what the soundings say.
 *
 * @returns undefined while there is nothing to say yet
 */
export function headlineOf(given: HeadlineGiven): VerdictWords | undefined {
  const { answer, error, freshness, isFuelSmelt, refuel } = given;
  if (isFuelSmelt) return FUEL;
  if (freshness.last === undefined) return NOT_SOUNDED;
  if (freshness.isStale) {
    return {
      ...NOT_KNOWN,
      detail: `last sounding ${sayAge(freshness.age / 1000)} ago. Sound now`,
      ...asideOf(answer, freshness),
    };
  }
  if (!answer) return error === undefined ? undefined : NOT_COMPUTED;
  return isLone(answer) ? sayLone(given, answer) : sayVerdict(answer, refuel);
}

/** One sounding shows neither rise nor fall: what is computed from it is what is thought of any hole. */
export function isLone(answer: OnSceneAnswer): boolean {
  return answer.reading?.soundings === 1 && !isAboveDeck(answer);
}

const FUEL: VerdictWords = {
  kind: "fuel",
  word: "FUEL SMELT",
  chance: "",
  detail: "every pump and engine off; people into open air",
};
const NOT_KNOWN = { kind: "unknown", word: "NOT KNOWN", chance: "" } as const;
const NOT_COMPUTED: VerdictWords = {
  kind: "unknown",
  word: "NOT COMPUTED",
  chance: "",
  detail: "no estimate: go on sounding, go by what you see and by the signs below",
};

function sayLone({ nextSounding, now, freshness, units }: HeadlineGiven, answer: OnSceneAnswer): VerdictWords {
  const left = (nextSounding ?? now) - Math.max(now, freshness.last ?? now);
  return {
    kind: "unknown",
    word: "ONE SOUNDING",
    chance: "",
    detail: left <= 0 ? "sound again now" : `sound again in ${Math.ceil(left / 60_000)}\u00a0min`,
    ...rangeOf(answer, units),
  };
}

function rangeOf({ reading, hull }: OnSceneAnswer, units: UnitSystem): Pick<VerdictWords, "aside"> {
  const end = reading?.fan.at(-1);
  if (!end) return {};
  const [low, high] = [end.p05, end.p95].map((level) =>
    level < hull.depth ? sayLevelAbout(level, units) : "her deck edge",
  );
  const range = low === high ? `up to ${high}` : `from ${low} to ${high}`;
  return { aside: `One sounding shows neither rise nor fall: in an hour anything ${range}.` };
}

function asideOf(answer: OnSceneAnswer | undefined, { last }: Freshness): Pick<VerdictWords, "aside"> {
  if (!answer?.reading || last === undefined) return {};
  const { word, detail } = sayVerdict(answer);
  const then = isLone(answer) ? "one sounding, which shows neither rise nor fall" : `${word}, ${detail}`;
  return { aside: `When last sounded, at ${sayClock(last)}: ${then}.` };
}
