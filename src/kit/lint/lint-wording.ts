import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps } from "../look-ups.ts";
import type { Check, Pattern, Step } from "../pattern.ts";

/* Can a cold stranger read it at a glance, and does it say what to see? */

const LONGEST_STEP = 170;
const LONGEST_ASK = 130;
const LONGEST_EXPECT = 170;
// Common practice: say what is seen; "set" and "checked" hide that nobody looked.
const VAGUE = /^(check|inspect|ensure|verify|make sure)\b/i;
const AFTER_ANSWERS = /\b(when|once|after)\b[^.]*\banswered\b/i;
const PROMISE = /\b(un)?safe(ly|ty)?\b/i;

/** Faults of the words a person reads. */
export function wordingLint(pattern: Pattern): readonly LintHit[] {
  return [...allSteps(pattern).flatMap(stepHits), ...pattern.checks.flatMap(checkHits)];
}

function stepHits(step: Step): readonly LintHit[] {
  const of = { what: "step", id: step.id } as const;
  return [
    ...lengthHits(of, step.text, LONGEST_STEP),
    ...lengthHits(of, step.why ?? "", LONGEST_STEP),
    ...wordHits(of, step.text),
    ...lengthHits(of, step.afterwards ?? "", LONGEST_STEP),
    ...wordHits(of, step.why ?? ""),
    ...wordHits(of, step.afterwards ?? ""),
    ...afterwardsHits(of, step),
  ];
}

/** What is done after the answers is read after them: once the last is given, the words before it are gone. */
function afterwardsHits(of: NonNullable<LintHit["of"]>, { text, checks, afterwards }: Step): readonly LintHit[] {
  const early = {
    what: "It tells before the answers what is done after them, when its words are no longer seen.",
    remedy: "Move that sentence to `afterwards`: it stands at the last answer.",
  };
  const unasked = {
    what: "It says what is done after its answers, and asks nothing.",
    remedy: "Say it in `text`, or let the step ask a check.",
  };
  return [
    ...(AFTER_ANSWERS.test(text) ? [hit("afterwards-misplaced", of, early)] : []),
    ...(afterwards !== undefined && checks.length === 0 ? [hit("afterwards-misplaced", of, unasked)] : []),
  ];
}

function checkHits(check: Check): readonly LintHit[] {
  const of = { what: "check", id: check.id } as const;
  return [
    ...lengthHits(of, check.ask, LONGEST_ASK),
    ...lengthHits(of, check.expect, LONGEST_EXPECT),
    ...wordHits(of, check.ask),
    ...wordHits(of, check.expect),
  ];
}

function lengthHits(of: NonNullable<LintHit["of"]>, text: string, most: number): readonly LintHit[] {
  const told = { what: `${text.length} characters in one breath.`, remedy: `Cut it to ${most}, or split it.` };
  return text.length > most ? [hit("too-long-to-read", of, told)] : [];
}

function wordHits(of: NonNullable<LintHit["of"]>, text: string): readonly LintHit[] {
  return badWords(text).map(({ rule, ...told }) => hit(rule, of, told));
}

/** Words that promise what nobody can, or do not say what to do. */
export function badWords(text: string): readonly Pick<LintHit, "rule" | "what" | "remedy">[] {
  const promise = {
    what: "It says that something is safe.",
    remedy: "Say what is seen or done; nobody can promise that.",
  };
  const vague = { what: `"${text.split(" ", 2).join(" ")}" does not say what to do.`, remedy: "Say what to look at." };
  return [
    ...(PROMISE.test(text) ? [{ rule: "promises-safety", ...promise } as const] : []),
    ...(VAGUE.test(text) ? [{ rule: "vague", ...vague } as const] : []),
  ];
}
