import { sayAge, type OnSceneAnswer } from "#questions";
import type { Freshness } from "./freshness.ts";
import { sayClock } from "./say.ts";
import { NOT_SOUNDED, sayVerdict, type VerdictWords } from "./verdict-words.ts";

/** What the line at the top goes by. */
export interface HeadlineGiven {
  /** As she is now by the soundings; where the last is too old, as she was then. */
  readonly answer: OnSceneAnswer | undefined;
  readonly freshness: Freshness;
  readonly isFuelSmelt: boolean;
  /** The next refuelling [ms], if one is known. */
  readonly refuel: number | undefined;
}

/**
 * The line at the top: fuel before all else, then that nothing is known any more, then what the soundings say.
 *
 * @returns undefined while there is nothing to say yet
 */
export function headlineOf({ answer, freshness, isFuelSmelt, refuel }: HeadlineGiven): VerdictWords | undefined {
  if (isFuelSmelt) return FUEL;
  if (freshness.last === undefined) return NOT_SOUNDED;
  if (freshness.isStale) {
    return {
      ...NOT_KNOWN,
      detail: `last sounding ${sayAge(freshness.age / 1000)} ago. Sound now`,
      ...asideOf(answer, freshness),
    };
  }
  return answer && sayVerdict(answer, refuel);
}

const FUEL: VerdictWords = {
  kind: "fuel",
  word: "FUEL SMELT",
  chance: "",
  detail: "every pump and engine off; people into open air",
};
const NOT_KNOWN = { kind: "unknown", word: "NOT KNOWN", chance: "" } as const;

function asideOf(answer: OnSceneAnswer | undefined, { last }: Freshness): Pick<VerdictWords, "aside"> {
  if (!answer?.reading || last === undefined) return {};
  const { word, detail } = sayVerdict(answer);
  return { aside: `When last sounded, at ${sayClock(last)}: ${word}, ${detail}.` };
}
