import { modeNamed, type Pattern } from "#kit";
import {
  OPENINGS_TO_TELL,
  reportsOf,
  SELDOM,
  type LineHard,
  type MinutesTaken,
  type ModeFound,
  type Proposal,
  type ReportCard,
  type UnnamedFound,
} from "#station";
import type { Words } from "#words";

type ReportWords = Words["patternReport"];

/** Why nothing is proposed, or that more could be with more openings. */
export function sayWanted({ proposals, openingsWanted }: ReportCard, words: ReportWords): string {
  const wanted = { share: sayOneIn(SELDOM, words), all: OPENINGS_TO_TELL, more: openingsWanted };
  return [
    ...(proposals.length === 0 ? [words.nothingYet()] : []),
    ...(openingsWanted === 0 ? [] : [words.wanted(wanted)]),
  ].join(" ");
}

/** "once in 20 times": a share as people count. */
export function sayOneIn(share: number, words: ReportWords): string {
  return words.oneIn({ count: Math.max(1, Math.floor(1 / share + 1e-9)) });
}

/** The proposal in one sentence, and the evidence in another. */
export function sayProposal(proposal: Proposal, pattern: Pattern, words: ReportWords): ProposalSaid {
  switch (proposal.kind) {
    case "find-sooner":
      return soonerWords(proposal.of, words);
    case "reword":
      return rewordWords(proposal.of, words);
    case "restate":
      return restateWords(proposal.of, words);
    case "ask-less":
      return { what: words.askLess({ ask: proposal.of.check.ask }), why: neverWords(proposal.of, words) };
    case "keep": {
      const modes = proposal.alone.map((id) => modeNamed(pattern, id)?.name ?? id).join(", ");
      const why = `${neverWords(proposal.of, words)} ${words.onlyOne({ modes })}`;
      return { what: words.keepIt({ ask: proposal.of.check.ask }), why };
    }
  }
}

interface ProposalSaid {
  readonly what: string;
  readonly why: string;
}

type Of<Kind extends Proposal["kind"]> = Extract<Proposal, { readonly kind: Kind }>["of"];

function neverWords({ looks, below = 1 }: Of<"ask-less">, words: ReportWords): string {
  return words.neverFound({ looks, share: sayOneIn(below, words) });
}

function soonerWords(
  { mode, once: { byOwn, byAccident }, checks }: Of<"find-sooner">,
  words: ReportWords,
): ProposalSaid {
  const times = words.times({ count: byAccident });
  if (checks === 0) return { what: words.addCheck({ mode: mode.name }), why: words.byAccidentNoCheck({ times }) };
  const why = words.byAccidentOwn({ times, own: words.times({ count: byOwn }) });
  return { what: words.findSooner({ mode: mode.name }), why };
}

function rewordWords(line: Of<"reword">, words: ReportWords): ProposalSaid {
  const { step, notPossible, asked } = line;
  const count = reportsOf(line);
  const reported = { times: words.times({ count }), reports: sayReports(line, words) };
  const told = count > 0 ? ` ${words.reportedTimes(reported)}` : "";
  const what = words.reword({ line: step.line, text: step.text });
  return { what, why: `${words.notPossibleIn({ count: notPossible, asked })}${told}` };
}

function restateWords({ step, stated, median, quartiles, times }: Of<"restate">, words: ReportWords): ProposalSaid {
  const [from, to] = [sayMinutes(quartiles[0]), sayMinutes(quartiles[1])];
  const of = { median: sayMinutes(median), line: step.line, stated: sayMinutes(stated), text: step.text };
  return { what: words.restate(of), why: words.halfTook({ count: times, from, to }) };
}

/** In how many openings a line was not possible, and how many more it takes where these tell nothing yet. */
export function sayNotPossible(
  { notPossible, asked, openingsWanted }: Pick<LineHard, "notPossible" | "asked" | "openingsWanted">,
  words: ReportWords,
): string {
  const of = { count: notPossible, all: asked };
  return openingsWanted === 0 ? words.countOf(of) : words.lineTooFew({ ...of, more: openingsWanted });
}

/** What stands where nothing was found wrong, or every line was possible: nothing is known before the first opening. */
export function sayNone({ openings }: Pick<ReportCard, "openings">, none: string, words: ReportWords): string {
  return openings === 0 ? words.noneOpened() : none;
}

const REPORTED = { wrong: "wrongTimes", impossible: "impossibleTimes", unclear: "unclearTimes" } as const;

/** What was reported of a line. */
export function sayReports({ reports }: Pick<LineHard, "reports">, words: ReportWords): string {
  const told = (["wrong", "impossible", "unclear"] as const).filter((what) => reports[what] > 0);
  return told.map((what) => words[REPORTED[what]]({ times: words.times({ count: reports[what] }) })).join(", ");
}

/** A row of what was wrong: a mode, or all that no mode of the pattern names. */
export type ModeRow = Pick<ModeFound, "byOwn" | "byAccident" | "where"> & { readonly name: string };

/** Every finding there was, in rows by mode; what no mode names stands last. */
export function modeRows(modes: readonly ModeFound[], unnamed: UnnamedFound, words: ReportWords): readonly ModeRow[] {
  const named = modes.map(({ mode, ...counts }) => ({ ...counts, name: mode.name }));
  return unnamed.byAccident === 0 ? named : [...named, { ...unnamed, byOwn: 0, name: words.noMode() }];
}

/** Minutes as people say them: under ten to the half. */
export function sayMinutes(minutes: number): string {
  const rounded = minutes < 10 ? Math.round(2 * minutes) / 2 : Math.round(minutes);
  return `${rounded}\u00a0min`;
}

/** How far off a line's minutes are: those furthest off come first. */
export function farOff({ stated, median }: MinutesTaken): number {
  return Math.abs(median - stated);
}
