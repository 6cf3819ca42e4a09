import { sayCount } from "#base";
import { readStick, type Sounding, type StickView } from "#flooding";
import { sayChance, sayDuration } from "#words";
import { changesOf, lastChangeOf } from "./on-scene-changes.ts";
import type { OnSceneInput, Word } from "./on-scene-fields.ts";
import { NEARLY_DRY } from "./on-scene-times.ts";

/** What the word goes by. */
export interface WordGiven {
  readonly input: OnSceneInput;
  /** What is thought of her by hole, hull and pump; absent before the first sounding. */
  readonly sounding?: Sounding;
  /** The last sounding is higher than her deck edge. */
  readonly isAboveDeck: boolean;
}

/**
 * A rise is said from this chance on, kept down to the other, and never from fewer soundings. A fall too, but there the
 * last sounding weighs as a possible untold change: who is told that she gains looks away.
 */
const SHOWN = 0.97;
const KEPT = 0.95;
/**
 * A rise that was said is said on while no sounding is lower and it is likelier than not that it goes on: what turns it is
 * a lower sounding, a steady level or one that does not go with the others, and not a rate that is less well known.
 */
const STILL_RISING = 0.5;
const FEWEST = 2;
/** Holding is said from this chance, and from so many soundings over so long [s]. */
const STEADY = 0.8;
const STEADY_SOUNDINGS = 3;
const STEADY_SPAN = 240;
/** What is expected after a change is said from this chance on. */
const EXPECTED = 0.7;
/** A fall is not said where the last sounding is more likely than not a slip or something new. */
const ODD = 0.5;
/** Against this chance by the stick nothing is expected. */
const AGAINST = 0.8;

/**
 * The word at the top: what soundings since the last change have shown beyond the stick's own error; until then what
 * should be, or that it is too soon to say. Decided here and nowhere else; every door words it.
 *
 * @param given - the sheet, and what is thought of her
 * @returns the word with its reason, the chance of what it says (0 where it says nothing of her), the last change and
 *   the soundings since it
 * @source this program's judgement; docs/methods/soundings.md, "The word"; figures measured there
 */
export function wordOf({ input, sounding, isAboveDeck }: WordGiven): Word {
  const since = lastChangeOf(input);
  const soundings = input.readings.filter(({ at }) => since === undefined || at >= since).length;
  const own = { ...(since !== undefined && { since }), soundings };
  const told = toldWord(input, sounding, isAboveDeck);
  if (told) return { ...told, certainty: 0, ...own };
  const views = soundings === 0 ? [] : readStick(input.readings, changesOf(input));
  const shown = earnedBy(input, views) ?? expectedWord(input, sounding!, views.at(-1)) ?? tooSoon(input, views.at(-1));
  return { ...shown, because: shown.because || becauseOf(input, shown.kind, own), ...own };
}

/**
 * The word that the stick alone has earned at the last sounding; nothing expected of hole and pump.
 *
 * @param asked - with two soundings at least
 */
export function wordByStick(asked: OnSceneInput): Word {
  const input = { ...asked, now: asked.readings.at(-1)!.at };
  const since = lastChangeOf(input);
  const views = readStick(input.readings, changesOf(input));
  const said = earnedBy(input, views) ?? tooSoon(input, views.at(-1));
  const own = { ...(since !== undefined && { since }), soundings: views.at(-1)!.soundings };
  return { ...said, because: said.because || becauseOf(input, said.kind, own), ...own };
}

/** True of a word that soundings have earned. */
export function isEarned(kind: Word["kind"] | undefined): boolean {
  return kind === "gaining" || kind === "holding" || kind === "losing";
}

/**
 * The last word that the stick has earned, at whichever sounding: since the last change or, where soundings have shown
 * nothing since, before it.
 *
 * @param asked - with any soundings
 * @returns undefined where none ever was
 */
export function lastEarned(asked: OnSceneInput): Word["kind"] | undefined {
  let { readings } = asked;
  while (readings.length > 1) {
    const input = { ...asked, readings, now: readings.at(-1)!.at };
    let said: Said | undefined;
    const kinds = readStick(readings, changesOf(input)).map((view) => (said = shownAfter(view, said?.kind))?.kind);
    const earned = kinds.findLast(isEarned);
    const since = lastChangeOf(input);
    if (earned !== undefined || since === undefined) return earned;
    readings = readings.filter(({ at }) => at < since);
  }
  return undefined;
}

/** What the stick alone has shown. */
function earnedBy(input: OnSceneInput, views: readonly StickView[]): Said | undefined {
  return shownBy(views) ?? heldLow(input);
}

/**
 * Down to the strainer: the fall has ended because there is no more to take out. Where the last soundings all stand at
 * what a pump leaves, they alone tell whether the level stays there.
 */
function heldLow(input: OnSceneInput): Said | undefined {
  const { readings } = input;
  const since = lastChangeOf(input) ?? Number.NEGATIVE_INFINITY;
  const low = readings.slice(readings.findLastIndex(({ level, at }) => level > NEARLY_DRY || at < since) + 1);
  const said = low.length < STEADY_SOUNDINGS ? undefined : shownBy(readStick(low, []));
  if (said?.kind !== "holding") return undefined;
  const deepest = Math.max(...low.map(({ level }) => level));
  const because = `The last ${low.length} soundings all found ${Math.round(100 * deepest)}\u00a0cm or less: down to what a pump leaves.`;
  return { ...said, because };
}

type Said = Pick<Word, "kind" | "because" | "certainty">;

/** Words that no rate of rise is needed for. */
function toldWord(
  input: OnSceneInput,
  sounding: Sounding | undefined,
  isAboveDeck: boolean,
): Omit<Said, "certainty"> | undefined {
  if (input.fuelSmelt === true) return { kind: "fuel", because: "Fuel was smelt or seen: every pump and engine off." };
  if (sounding === undefined) return { kind: "not-known", because: "Nothing has been sounded yet." };
  if (isAboveDeck) return { kind: "above-deck", because: "The last sounding is higher than her deck edge." };
  if (sounding.stale)
    return { kind: "not-known", because: `Last sounding ${sayDuration(sounding.age, "elapsed")} ago. Sound now.` };
  if (input.readings.length > 1) return undefined;
  return { kind: "one-sounding", because: "One sounding shows neither rise nor fall." };
}

/** Goes through the soundings since the change, so that a word once shown turns on evidence alone. */
function shownBy(views: readonly StickView[]): Said | undefined {
  let last: Said | undefined;
  for (const view of views) last = shownAfter(view, last?.kind);
  return last;
}

function shownAfter(view: StickView, before: Word["kind"] | undefined): Said | undefined {
  const { fallingOn, rising, steady, soundings, span, odd, of, move } = view;
  if (soundings < FEWEST) return undefined;
  const enough = (kind: Word["kind"]): number => (before === kind ? KEPT : SHOWN);
  if (rising >= enough("losing")) return { kind: "losing", because: "", certainty: rising };
  if (odd >= ODD && of > FEWEST) return { kind: "does-not-fit", because: NOT_FITTING, certainty: 0 };
  if (move <= 0 && fallingOn >= enough("gaining")) return { kind: "gaining", because: "", certainty: fallingOn };
  const isLong = soundings >= STEADY_SOUNDINGS && span >= STEADY_SPAN;
  if (isLong && steady >= STEADY) return { kind: "holding", because: "", certainty: steady };
  const isStillRising = before === "losing" && move >= 0 && rising >= STILL_RISING;
  return isStillRising ? { kind: "losing", because: "", certainty: rising } : undefined;
}

const NOT_FITTING = "The last sounding does not go with the ones before it: a slip, or something new. Sound again.";

/** What hole, hull and pump lead to expect of a change that the stick has not shown yet. */
function expectedWord(input: OnSceneInput, sounding: Sounding, view: StickView | undefined): Said | undefined {
  const { verdict, misfit } = sounding;
  if (lastChangeOf(input) === undefined || misfit.flagged || verdict.chance < EXPECTED) return undefined;
  const isAgainst = view !== undefined && view.soundings > 0 && against(verdict.kind, view) >= AGAINST;
  if (isAgainst) return undefined;
  const kind = `should-be-${verdict.kind}` as const;
  return { kind, because: "", certainty: verdict.chance };
}

function against(kind: Sounding["verdict"]["kind"], { rising, falling }: StickView): number {
  return kind === "gaining" ? rising : kind === "losing" ? falling : Math.max(rising, falling);
}

function tooSoon(input: OnSceneInput, view: StickView | undefined): Said {
  const since = lastChangeOf(input) === undefined ? "so far" : "since the last change";
  const count = view?.soundings ?? 0;
  const many = count === 1 ? "One sounding" : `${count} soundings`;
  return { kind: "too-soon", because: `${many} ${since}: too little for a stick to tell.`, certainty: 0 };
}

function becauseOf(input: OnSceneInput, kind: Word["kind"], own: Pick<Word, "since" | "soundings">): string {
  if (kind.startsWith("should-be")) return sayExpected(own.soundings);
  const seen = input.readings.slice(-own.soundings);
  const [from, to] = [seen[0]!, seen.at(-1)!].map(({ level }) => `${Math.round(100 * level)}\u00a0cm`);
  const span = sayDuration(Math.max(60, seen.at(-1)!.at - seen[0]!.at), "minutes");
  return `${sayCount(own.soundings, "sounding")} over ${span}${own.since === undefined ? "" : " since the last change"}: ${from} to ${to}.`;
}

/** Why a word is only expected, by how many soundings there are since the last change. */
function sayExpected(soundings: number): string {
  if (soundings === 0) return "Not sounded since the pumping or the hole was changed.";
  const seen = soundings < FEWEST ? "the stick has not shown it yet" : SHOW_NOTHING;
  return `Expected of hole and pump; ${seen}.`;
}

const SHOW_NOTHING = "the soundings since the last change do not show it by themselves";

const SAYS: Partial<Record<Word["kind"], string>> = {
  "too-soon": "Too soon to say: sound again.",
  "one-sounding": "One sounding: sound again.",
  "does-not-fit": "The soundings do not fit: sound again.",
  "above-deck": "Above her deck edge: look at the figure and sound again.",
  fuel: "Fuel smelt: stop every pump.",
};

/**
 * The word as one line.
 *
 * @param word - as the answer carries it
 * @returns "Gaining: 98 in 100."; "Should be gaining: 84 in 100. Not sounded since …"; "Too soon to say: sound again."
 */
export function sayWord({ kind, certainty, because }: Word): string {
  const said = SAYS[kind];
  if (said !== undefined) return said;
  if (kind === "not-known") return `Not known: ${because.charAt(0).toLowerCase()}${because.slice(1)}`;
  const plain = kind.replaceAll("-", " ");
  const chance = `${plain.charAt(0).toUpperCase()}${plain.slice(1)}: ${sayChance(certainty)}.`;
  return kind.startsWith("should-be") ? `${chance} ${because}` : chance;
}
