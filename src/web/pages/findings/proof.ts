import { stepOfCheck, type Check, type Pattern, type Step } from "#kit";
import {
  proofSoFar,
  proofWanted,
  type Answer,
  type Bodies,
  type CheckSoFar,
  type Finding,
  type Turnaround,
  type Value,
} from "#readiness";

/** One check repeated, as the proof carries it. */
export type Repeated = Bodies["finding-proved"]["checks"][number];

/** Checks repeated so far, by id. */
export type Proof = Readonly<Record<string, Repeated>>;

/** A proof before anything is repeated on its page. */
export interface ProofBegun {
  /** Every check that the proof needs, with the step that asks it. */
  readonly checks: readonly Pick<CheckSoFar, "check" | "step">[];
  /** What the lines of the open turnaround found right already since something was done. */
  readonly given: Proof;
  /** Entry of the newest answer that a line gave to it: what was made on the page before may be undone by it. */
  readonly newest?: string;
}

/** What a proof needs, and what of it need not be made again. */
export function proofBegun(finding: Finding, pattern: Pattern, turnaround: Turnaround | undefined): ProofBegun {
  if (!turnaround) return { checks: inLineOrder(finding, pattern), given: {} };
  const { checks } = proofSoFar(finding, pattern, turnaround);
  const newest = checks
    .flatMap(({ answered }) => answered?.mark.entry ?? [])
    .toSorted()
    .at(-1);
  const right = checks.filter(({ answered }) => answered?.answer === "seen");
  const given = right.reduce<Proof>((all, { check, answered }) => repeat(all, check, "seen", answered?.value), {});
  return { checks, given, ...(newest !== undefined && { newest }) };
}

function lineOf(step: Step | undefined): number {
  return step?.line ?? Number.MAX_SAFE_INTEGER;
}

function inLineOrder(finding: Finding, pattern: Pattern): ProofBegun["checks"] {
  return proofWanted(finding, pattern)
    .map((check) => ({ check, asked: stepOfCheck(pattern, check.id) }))
    .toSorted((one, other) => lineOf(one.asked) - lineOf(other.asked))
    .map(({ check, asked }) => ({ check, ...(asked && { step: asked.id }) }));
}

/** The proof as it stands: what was made on its page, and of the lines what no earlier line was made again after. */
export function joined({ checks, given }: ProofBegun, made: Proof): Proof {
  return checks.reduce<Proof>((proof, { check, step }, at) => {
    const isAfterMade = checks.slice(0, at).some((one) => made[one.check.id] !== undefined && one.step !== step);
    const counts = made[check.id] ?? (isAfterMade ? undefined : given[check.id]);
    return counts ? { ...proof, [check.id]: counts } : proof;
  }, {});
}

/**
 * What still counts of a proof once this check is answered again: nothing of the later lines, which may have been
 * undone by it.
 */
export function upTo(proof: Proof, checks: ProofBegun["checks"], check: Check): Proof {
  const at = checks.findIndex((one) => one.check.id === check.id);
  const later = checks.slice(at + 1).filter(({ step }) => step === undefined || step !== checks[at]?.step);
  return Object.fromEntries(Object.entries(proof).filter(([id]) => !later.some((one) => one.check.id === id)));
}

/** Adds or replaces the answer to one check. */
export function repeat(proof: Proof, check: Check, answer: Answer, value: Value | undefined): Proof {
  return { ...proof, [check.id]: { check: check.id, answer, ...(value && { value }) } };
}

/** How far a proof has come: `right` only where every check has been seen right. */
export type ProofOutcome = "incomplete" | "right" | "not-right";

/** What the repeated checks say together. */
export function judgeProof(checks: readonly Check[], proof: Proof): ProofOutcome {
  const answers = checks.map((check) => proof[check.id]?.answer);
  if (answers.length === 0 || answers.includes(undefined)) return "incomplete";
  return answers.every((answer) => answer === "seen") ? "right" : "not-right";
}

/** The proof as written down, in the order of the checks. */
export function proofBody(finding: string, checks: readonly Check[], proof: Proof): Bodies["finding-proved"] {
  return { finding, checks: checks.flatMap((check) => proof[check.id] ?? []) };
}
