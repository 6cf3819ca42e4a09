import type { Check, Pattern } from "#kit";
import { stepNamed, stepOfCheck } from "#kit";
import type { Bodies } from "../kinds/kinds.ts";
import type { StepAnswer } from "../kinds/kit-parts.ts";
import type { Finding, Mark, Turnaround } from "../state.ts";
import { isRemedied, proofWanted } from "./finding-list.ts";

/** How far the lines of a turnaround have proved a finding put right. */
export interface ProofSoFar {
  /** Every check its proof needs, with the answer given since something was last done about it. */
  readonly checks: readonly CheckSoFar[];
  /** True where one of them was found wrong again: more has to be done. */
  readonly isRefuted: boolean;
  /** What the proof says once every check was seen right; absent before. */
  readonly proof?: Bodies["finding-proved"];
}

export interface CheckSoFar {
  readonly check: Check;
  /** The step that asks it, where one does. */
  readonly step?: string;
  readonly answered?: StepAnswer & { readonly mark: Mark };
}

/**
 * What a turnaround's own lines prove of a finding: each check of its proof, answered again after the last remedy, in
 * the pattern's order.
 *
 * An answer from before the remedy proves nothing, and without a remedy nothing is proved yet. Nor does what was seen
 * right at a later line before the proof's earlier lines were answered last: a joint proved dry and parted again.
 */
export function proofSoFar(finding: Finding, pattern: Pattern, turnaround: Turnaround): ProofSoFar {
  const done = finding.remedies.findLast(({ remedy }) => remedy.how !== "lived-with");
  const answers = proofWanted(finding, pattern).map((check): CheckSoFar => {
    const answered = done && newestSince(turnaround, check.id, done);
    const step = answered?.step ?? stepOfCheck(pattern, check.id)?.id;
    return { check, ...(step !== undefined && { step }), ...(answered && { answered }) };
  });
  const checks = inOrder(answers, pattern, turnaround);
  const isWhole =
    isRemedied(finding) && checks.length > 0 && checks.every(({ answered }) => answered?.answer === "seen");
  const isRefuted = checks.some(({ answered }) => answered?.answer === "wrong");
  return isWhole ? { checks, isRefuted, proof: proofOf(finding, turnaround, checks) } : { checks, isRefuted };
}

/** True where nothing but this check is left to be answered, or was, before the finding can be closed. */
export function isLastToProve({ checks }: ProofSoFar, check: string): boolean {
  return checks.some((one) => one.check.id === check) && checks.every((one) => one.check.id === check || one.answered);
}

/** By their lines; what was seen right counts only after all of the earlier lines. What was found wrong stands. */
function inOrder(checks: readonly CheckSoFar[], pattern: Pattern, turnaround: Turnaround): readonly CheckSoFar[] {
  const lineOf = ({ step }: CheckSoFar) => stepNamed(pattern, step ?? "")?.line ?? Infinity;
  const sorted = checks.toSorted((one, other) => Math.sign(lineOf(one) - lineOf(other)) || 0);
  return sorted.reduce<readonly CheckSoFar[]>((ordered, one) => {
    const earlier = ordered.filter((other) => lineOf(other) < lineOf(one));
    const isTooSoon = earlier.some(({ answered }) => !answered || isTouchedSince(turnaround, answered.step, one));
    return [...ordered, isTooSoon && one.answered?.answer === "seen" ? withoutAnswer(one) : one];
  }, []);
}

/** True where anything of an earlier line was answered after this check: the joint was parted once more. */
function isTouchedSince({ answers }: Turnaround, step: string, { answered }: CheckSoFar): boolean {
  return Object.values(answers).some((one) => one.step === step && answered && isAfter(one.mark, answered.mark));
}

function withoutAnswer({ answered: _answered, ...asked }: CheckSoFar): CheckSoFar {
  return asked;
}

function newestSince(turnaround: Turnaround, check: string, done: Mark) {
  const given = Object.values(turnaround.answers).filter((one) => one.check === check && isAfter(one.mark, done));
  return given.toSorted((one, other) => (isAfter(one.mark, other.mark) ? -1 : 1))[0];
}

function isAfter(one: Mark, other: Mark): boolean {
  const apart = Date.parse(one.at) - Date.parse(other.at);
  return apart > 0 || (apart === 0 && one.entry > other.entry);
}

function proofOf(finding: Finding, turnaround: Turnaround, checks: readonly CheckSoFar[]): Bodies["finding-proved"] {
  const repeated = checks.map(({ check, answered }) => ({
    check: check.id,
    answer: "seen" as const,
    ...(answered?.value && { value: answered.value }),
  }));
  return { finding: finding.id, checks: repeated, turnaround: turnaround.id };
}
