import { modeNamed, type Pattern } from "#kit";
import {
  OPENINGS_TO_TELL,
  reportsOf,
  SELDOM,
  type LineHard,
  type MinutesTaken,
  type Proposal,
  type ReportCard,
} from "#station";
import { sayCount } from "#web/parts/words/say-count.ts";

/** What a report card rests on. */
export function sayBasis({ openings, kits }: ReportCard): string {
  return `From ${sayCount(openings, "opening")} of ${sayCount(kits, "kit")}, whatever the version of the pattern they were built to.`;
}

/** Why nothing is proposed, or that more could be with more openings. */
export function sayWanted({ proposals, openingsWanted }: ReportCard): string {
  const none = proposals.length === 0 ? "The log would change nothing yet. " : "";
  if (openingsWanted === 0) return none.trim();
  const seldom = `fewer than ${sayOneIn(SELDOM)}`;
  return `${none}To say of a check that it finds something in ${seldom} openings takes ${OPENINGS_TO_TELL} of them without a find: about ${sayCount(openingsWanted, "opening")} more.`;
}

/** "1 in 20": a share as people count. */
export function sayOneIn(share: number): string {
  return `1 in ${Math.max(1, Math.floor(1 / share + 1e-9))}`;
}

/** The proposal in one sentence, and the evidence in another. */
export function sayProposal(proposal: Proposal, pattern: Pattern): { readonly what: string; readonly why: string } {
  switch (proposal.kind) {
    case "find-sooner":
      return soonerWords(proposal.of);
    case "reword":
      return rewordWords(proposal.of);
    case "restate":
      return restateWords(proposal.of);
    case "ask-less":
      return { what: `Ask it less often: ${proposal.of.check.ask}`, why: neverWords(proposal.of) };
    case "keep": {
      const names = proposal.alone.map((id) => modeNamed(pattern, id)?.name ?? id).join(", ");
      const what = `Keep it, though it never found anything: ${proposal.of.check.ask}`;
      return { what, why: `${neverWords(proposal.of)} Nothing else is there to find what grounds the kit: ${names}.` };
    }
  }
}

type Of<Kind extends Proposal["kind"]> = Extract<Proposal, { readonly kind: Kind }>["of"];

function neverWords({ looks, below = 1 }: Of<"ask-less">): string {
  return `Never found anything in ${sayCount(looks, "opening")}: nineteen times in twenty it finds something in fewer than ${sayOneIn(below)}.`;
}

function soonerWords({ mode, byOwn, byAccident, checks }: Of<"find-sooner">) {
  const own = checks === 0 ? "No check is there to find it" : `Its own checks found it ${sayTimes(byOwn)}`;
  const what =
    checks === 0 ? `Add a check that finds it: ${mode.name}` : `Find it sooner, or by another check: ${mode.name}`;
  return { what, why: `Found by accident ${sayTimes(byAccident)}. ${own}.` };
}

function rewordWords(line: Of<"reword">) {
  const told = reportsOf(line) > 0 ? ` Reported ${sayTimes(reportsOf(line))}: ${sayReports(line)}.` : "";
  const what = `Word line ${line.step.line} anew, or leave it out: ${line.step.text}`;
  return { what, why: `Not possible in ${line.notPossible} of ${sayCount(line.asked, "opening")}.${told}` };
}

function restateWords({ step, stated, median, quartiles, times }: Of<"restate">) {
  const half = `half of ${times} took ${sayMinutes(quartiles[0])} to ${sayMinutes(quartiles[1])}`;
  return {
    what: `State ${sayMinutes(median)} at line ${step.line}, not ${sayMinutes(stated)}: ${step.text}`,
    why: `${half.charAt(0).toUpperCase()}${half.slice(1)}.`,
  };
}

/** What was reported of a line. */
export function sayReports({ reports }: LineHard): string {
  const told = (["wrong", "impossible", "unclear"] as const).filter((what) => reports[what] > 0);
  return told.map((what) => `${what} ${sayTimes(reports[what])}`).join(", ");
}

/** "once", "3 times", "never". */
export function sayTimes(count: number): string {
  if (count === 0) return "never";
  return count === 1 ? "once" : `${count} times`;
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
