import { stepOfCheck, type Check, type Pattern } from "#kit";
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
}

/** What a proof needs, and what of it need not be made again. */
export function proofBegun(finding: Finding, pattern: Pattern, turnaround: Turnaround | undefined): ProofBegun {
  if (!turnaround) {
    const checks = proofWanted(finding, pattern).map((check) => {
      const step = stepOfCheck(pattern, check.id)?.id;
      return { check, ...(step !== undefined && { step }) };
    });
    return { checks, given: {} };
  }
  const { checks } = proofSoFar(finding, pattern, turnaround);
  const right = checks.filter(({ answered }) => answered?.answer === "seen");
  const given = right.reduce<Proof>((all, { check, answered }) => repeat(all, check, "seen", answered?.value), {});
  return { checks, given };
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
