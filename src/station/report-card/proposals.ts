import { checksFinding, type Pattern } from "#kit";
import { looksToSay } from "#reliability";
import type { CheckFound } from "./checks-found.ts";
import { reportsOf, type LineHard } from "./lines-hard.ts";
import type { MinutesTaken } from "./minutes-taken.ts";
import type { ModeFound } from "./modes-found.ts";

/** What the log would change in a pattern, with what it rests on. The pattern's owner decides. */
export type Proposal =
  /** It never found anything, and its bound is low enough to ask it less often. */
  | { readonly kind: "ask-less"; readonly of: CheckFound }
  /** The same, but nothing else is there to find a mode that grounds the kit: it stays. */
  | { readonly kind: "keep"; readonly of: CheckFound; readonly alone: readonly string[] }
  /** Found at least as often by accident as by its checks. */
  | { readonly kind: "find-sooner"; readonly of: ModeFound }
  /** Often not possible, or reported more than once. */
  | { readonly kind: "reword"; readonly of: LineHard }
  /** Takes clearly more or less than it states. */
  | { readonly kind: "restate"; readonly of: MinutesTaken };

/** A check that finds something in fewer openings than this may be asked less often: judgement. */
export const SELDOM = 0.05;
/** Openings without a find that it takes to say so. */
export const OPENINGS_TO_TELL = looksToSay(SELDOM);
/** A line not possible in more than this share of openings is worth another wording: judgement. */
const OFTEN = 0.1;
/** Minutes are told from so many openings on, where half of them lie this far off: judgement. */
const TIMED = 8;
const FAR = 1.5;
/** Less than this is not worth a new version [min]. */
const SLIGHT = 1;

/** What a report card rests on. */
export interface CardFigures {
  readonly checks: readonly CheckFound[];
  readonly modes: readonly ModeFound[];
  readonly lines: readonly LineHard[];
  readonly minutes: readonly MinutesTaken[];
}

/**
 * What the log would change in a pattern. Too few openings propose nothing.
 *
 * @param pattern - its newest version
 * @param figures - what the log says of it
 */
export function proposalsOf(pattern: Pattern, { checks, modes, lines, minutes }: CardFigures): readonly Proposal[] {
  return [
    ...modes.filter(isFoundByAccident).map((of) => ({ kind: "find-sooner", of }) as const),
    ...lines.filter(isTooHard).map((of) => ({ kind: "reword", of }) as const),
    ...minutes.filter(isFarOff).map((of) => ({ kind: "restate", of }) as const),
    ...checks.flatMap((of) => aboutCheck(pattern, of)),
  ];
}

function isFoundByAccident({ once: { byOwn, byAccident } }: ModeFound): boolean {
  return byAccident >= 2 && byAccident >= byOwn;
}

function isTooHard(line: LineHard): boolean {
  return (line.openingsWanted === 0 && line.atLeast > OFTEN) || reportsOf(line) >= 2;
}

function isFarOff({ stated, times, median, quartiles: [low, high] }: MinutesTaken): boolean {
  if (times < TIMED || Math.abs(median - stated) < SLIGHT) return false;
  return low > FAR * stated || high < stated / FAR;
}

function aboutCheck(pattern: Pattern, of: CheckFound): readonly Proposal[] {
  if (of.below === undefined || of.below > SELDOM) return [];
  const alone = of.check.finds.filter((id) => checksFinding(pattern, id).length === 1 && isGrounding(pattern, id));
  return alone.length > 0 ? [{ kind: "keep", of, alone }] : [{ kind: "ask-less", of }];
}

function isGrounding({ modes }: Pattern, id: string): boolean {
  return modes.some((mode) => mode.id === id && mode.effect === "grounds");
}
