import type { OnSceneAnswer, Word } from "#questions";
import { sayChance, sayDuration } from "#words";
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

/** Words of which nobody has seen anything yet, and what to do about it. */
const NOTHING_SEEN: Partial<Record<Word["kind"], readonly [word: string, detail: string]>> = {
  "too-soon": ["TOO SOON TO SAY", "sound again"],
  "one-sounding": ["ONE SOUNDING", "sound again"],
  "does-not-fit": ["SOUNDINGS DO NOT FIT", "sound again, look at strainer and hole"],
  "not-known": ["NOT KNOWN", "sound now"],
};

/**
 * The word of the answer, in one line. Nothing is decided here.
 *
 * @param answer - to `on-scene`
 */
export function sayVerdict(answer: OnSceneAnswer): VerdictWords {
  const { reading, word } = answer;
  if (!reading) return NOT_SOUNDED;
  if (word.kind === "above-deck") return ABOVE_DECK;
  if (word.kind === "fuel") return FUEL;
  const why = whyOf(answer);
  const plain = NOTHING_SEEN[word.kind];
  if (plain) return { kind: "unknown", word: plain[0], chance: "", detail: plain[1], why };
  const isExpected = word.kind.startsWith("should-be");
  return {
    kind: isExpected ? "unknown" : (word.kind as VerdictWords["kind"]),
    word: word.kind.replaceAll("-", " ").toUpperCase(),
    chance: sayChance(word.certainty),
    detail: isExpected ? UNSEEN : seenDetail(answer),
    why,
  };
}

/** The last sounding is higher than her deck edge. */
export function isAboveDeck({ word }: OnSceneAnswer): boolean {
  return word.kind === "above-deck";
}

/** Before the first sounding there is nothing to wait for. */
export const NOT_SOUNDED: VerdictWords = {
  kind: "unknown",
  word: "NO SOUNDING YET",
  chance: "",
  detail: "sound the water at one mark",
};
export const FUEL: VerdictWords = {
  kind: "fuel",
  word: "FUEL SMELT",
  chance: "",
  detail: "every pump and engine off; people into open air",
};
const ABOVE_DECK: VerdictWords = {
  kind: "unknown",
  word: "CHECK THE SOUNDING",
  chance: "",
  detail: "higher than her deck edge: look again",
};

/** Nothing is certain before somebody has seen it. */
const UNSEEN = "not seen yet: sound again";

type Reading = NonNullable<OnSceneAnswer["reading"]>;
type Time = NonNullable<NonNullable<Reading["dry"]>["time"]>;

function seenDetail({ reading, word, leave }: OnSceneAnswer): string {
  const { dry, loss } = reading!;
  const isDry = dry?.time !== undefined && dry.chance > 0.5;
  if (isDry && dry.time!.p50 < DRY_NOW) return "dry or nearly: sound, then ease the pump";
  if (word.kind === "gaining")
    return isDry ? `dry in about ${sayDuration(dry.time!.p50, "estimate")}` : "falling, slowly";
  if (word.kind === "holding") return "no rise or fall a stick can tell";
  if (loss?.time && loss.chance > 0.5) return `off in ${sayDuration(loss.time.p05, "estimate")}${sayUnless(reading!)}`;
  return leave.kind === "now" ? "rising: people off first" : "rising: slow the hole, add a pump";
}

/** Why, each a sentence: what the word rests on, the spread of its time, a trend where nothing fits. */
function whyOf({ word, reading }: OnSceneAnswer): readonly string[] {
  const { dry, loss, trend } = reading!;
  const why: (string | false | undefined)[] = [
    word.because,
    word.kind === "gaining" && dry?.time && dry.chance > 0.5 && `Dry in ${saySpread(dry.time)}, nine times in ten.`,
    word.kind === "losing" && loss?.time && loss.chance > 0.5 && `Lost in ${saySpread(loss.time)}, nine times in ten.`,
    trend && sayTrend(trend),
  ];
  return why.filter((one) => typeof one === "string");
}

const HELPS = {
  "patch-half": " unless the hole is halved",
  "second-pump": " unless one more kit pumps",
  "more-throttle": " unless the engine opens up",
  "shorter-lift": " unless the pump sits lower",
} as const;

/** What alone would more likely than not hold her: the patch before anything else, since it costs no pump. */
function sayUnless({ advice }: Reading): string {
  const enough = advice.filter(({ holding }) => holding > 0.5);
  const best = enough.find(({ action }) => action === "patch-half") ?? enough[0];
  if (best) return HELPS[best.action];
  const isAsked = advice.some(({ action }) => action === "second-pump");
  return isAsked ? ": one pump more too little" : " by this estimate";
}

/** "25 min to 70 min". */
function saySpread({ p05, p95 }: Time): string {
  return `${sayDuration(p05, "estimate")} to ${sayDuration(p95, "estimate")}`;
}
