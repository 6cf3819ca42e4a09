import type { Check } from "#kit";
import type { Answer, Value } from "../kinds/schema-parts.ts";
import { judgeReading, type Against } from "./reading.ts";

/** Whether an answer may stand beside its reading: nothing was read, or what was read is not right. */
export type AnswerVerdict = "stands" | "not-read" | "outside";

/** Kinds of check that the eye judges. */
const BY_EYE: ReadonlySet<Check["kind"]> = new Set(["look", "prove"]);

/**
 * Holds an answer against its reading. Only "seen" claims that something is right; "wrong" and "not possible" always
 * stand.
 *
 * @param check - what was asked
 * @param given - the answer, and the reading where there is one
 * @param against - the day, and the seal on record
 */
export function judgeAnswer(
  check: Check,
  { answer, value }: { readonly answer: Answer; readonly value?: Value | undefined },
  against: Against,
): AnswerVerdict {
  if (answer !== "seen" || BY_EYE.has(check.kind)) return "stands";
  if (value === undefined) return "not-read";
  return judgeReading(check, value, against)?.right === true ? "stands" : "outside";
}
