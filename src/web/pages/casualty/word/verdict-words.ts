import type { UnitSystem } from "#base";
import type { OnSceneAnswer, Word } from "#questions";
import { sayChance, sayDuration, sayLevelAbout, type Words } from "#words";
import { sayTrend } from "./trend-words.ts";

/** The one line: a word, and what it comes to; both together at most twelve words, with one number at most. */
export interface VerdictWords {
  readonly kind: "gaining" | "holding" | "losing" | "unknown" | "fuel" | "leave";
  readonly word: string;
  readonly chance: string;
  readonly detail: string;
  /** Why, by a tap: what the word rests on, and what else is known; each a sentence. */
  readonly why?: readonly string[];
}

/** Dry this soon is dry now [s]. */
const DRY_NOW = 90;

type Messages = Words["sheetWord"];

/** Words of which nobody has seen anything yet, and what to do about it. */
const NOTHING_SEEN = {
  "too-soon": ["tooSoon", "soundAgain"],
  "one-sounding": ["oneSounding", "soundAgain"],
  "does-not-fit": ["doesNotFit", "lookAround"],
  "not-known": ["notKnown", "soundNow"],
} as const;

const SEEN = { gaining: "gaining", holding: "holding", losing: "losing" } as const;

const EXPECTED = {
  "should-be-gaining": "shouldBeGaining",
  "should-be-holding": "shouldBeHolding",
  "should-be-losing": "shouldBeLosing",
} as const;

/**
 * The word of the answer, in one line. Nothing is decided here.
 *
 * @param answer - to `on-scene`
 * @param units - the reader's
 */
export function sayVerdict(answer: OnSceneAnswer, units: UnitSystem, words: Messages): VerdictWords {
  const { reading, word } = answer;
  if (!reading) return notSounded(words);
  const { kind } = word;
  if (kind === "above-deck") return plainly("unknown", words.checkSounding(), words.aboveDeck());
  if (kind === "fuel") return fuelSmelt(words);
  const why = whyOf(answer, units, words);
  if (isIn(NOTHING_SEEN, kind)) {
    const [plain, detail] = NOTHING_SEEN[kind];
    return { ...plainly("unknown", words[plain](), words[detail]()), why };
  }
  const chance = sayChance(word.certainty);
  if (isIn(EXPECTED, kind)) return { ...plainly("unknown", words[EXPECTED[kind]](), words.notSeen()), chance, why };
  return { kind, word: words[SEEN[kind]](), chance, detail: seenDetail(answer, words), why };
}

function isIn<Kinds extends object>(kinds: Kinds, kind: Word["kind"]): kind is Word["kind"] & keyof Kinds {
  return Object.hasOwn(kinds, kind);
}

function plainly(kind: VerdictWords["kind"], word: string, detail: string): VerdictWords {
  return { kind, word, chance: "", detail };
}

/** The last sounding is higher than her deck edge. */
export function isAboveDeck({ word }: OnSceneAnswer): boolean {
  return word.kind === "above-deck";
}

/** Before the first sounding there is nothing to wait for. */
export function notSounded(words: Messages): VerdictWords {
  return plainly("unknown", words.noSounding(), words.soundFirst());
}

/** Before all else. */
export function fuelSmelt(words: Messages): VerdictWords {
  return plainly("fuel", words.fuelSmelt(), words.allOff());
}

type Reading = NonNullable<OnSceneAnswer["reading"]>;
type Time = NonNullable<NonNullable<Reading["dry"]>["time"]>;

function seenDetail({ reading, word, leave }: OnSceneAnswer, words: Messages): string {
  const { dry, loss } = reading!;
  const isDry = dry?.time !== undefined && dry.chance > 0.5;
  if (isDry && dry.time!.p50 < DRY_NOW) return words.nearlyAtStrainer();
  if (word.kind === "gaining")
    return isDry ? words.strainerIn({ duration: sayDuration(dry.time!.p50, "estimate") }) : words.falling();
  if (word.kind === "holding") return words.noChange();
  if (loss?.time && loss.chance > 0.5) return sayOff(reading!, sayDuration(loss.time.p05, "estimate"), words);
  return leave.kind === "now" ? words.risingOff() : words.risingSlow();
}

/** Why, each a sentence: what the word rests on, the spread of its time, a trend where nothing fits. */
function whyOf({ word, reading }: OnSceneAnswer, units: UnitSystem, words: Messages): readonly string[] {
  const { dry, loss, trend } = reading!;
  const why: (string | false | undefined)[] = [
    word.because,
    word.kind === "gaining" && dry?.time && dry.chance > 0.5 && sayDry(dry.time, dry.left, units, words),
    word.kind === "losing" && loss?.time && loss.chance > 0.5 && words.lostBetween(spreadOf(loss.time)),
    trend && sayTrend(trend, words),
  ];
  return why.filter((one) => typeof one === "string");
}

/** No pump takes the last of it: "Dry" is down to the strainer, and what is left under it stands beside the time. */
function sayDry(time: Time, left: number | undefined, units: UnitSystem, words: Messages): string {
  const spread = spreadOf(time);
  return left === undefined
    ? words.strainerBetween(spread)
    : words.strainerBetweenLeft({ ...spread, left: sayLevelAbout(left, units) });
}

const HELPS = {
  "patch-half": "offUnlessPatch",
  "second-pump": "offUnlessPump",
  "more-throttle": "offUnlessThrottle",
  "shorter-lift": "offUnlessLower",
} as const;

/** What alone would more likely than not hold her: the patch before anything else, since it costs no pump. */
function sayOff({ advice }: Reading, duration: string, words: Messages): string {
  const enough = advice.filter(({ holding }) => holding > 0.5);
  const best = enough.find(({ action }) => action === "patch-half") ?? enough[0];
  if (best) return words[HELPS[best.action]]({ duration });
  const isAsked = advice.some(({ action }) => action === "second-pump");
  return isAsked ? words.offPumpTooLittle({ duration }) : words.offIn({ duration });
}

/** From 25 min to 70 min. */
function spreadOf({ p05, p95 }: Time): { readonly from: string; readonly to: string } {
  return { from: sayDuration(p05, "estimate"), to: sayDuration(p95, "estimate") };
}
