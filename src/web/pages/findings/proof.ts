import type { Check } from "#kit";
import type { Answer, Bodies, Value } from "#readiness";

/** One check repeated, as the proof carries it. */
export type Repeated = Bodies["finding-proved"]["checks"][number];

/** Checks repeated so far, by id. */
export type Proof = Readonly<Record<string, Repeated>>;

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
