import type { Fault } from "#base";
import type { Check } from "#kit";
import { judgeAnswer, type Against, type Answer, type Value } from "#readiness";
import { because } from "./faults.ts";

/** An answer to a check, with its reading where there is one. */
export interface GivenAnswer {
  readonly answer: Answer;
  readonly value?: Value;
}

/**
 * What speaks against an answer of "seen": SN-127 nothing was read, SN-126 what was read is not right.
 *
 * @param field - where the reading stands in the body
 */
export function answerFaults(check: Check, given: GivenAnswer, against: Against, field: string): readonly Fault[] {
  const verdict = judgeAnswer(check, given, against);
  if (verdict === "stands") return [];
  if (verdict === "not-read") return [because("SN-127", field, undefined, check.expect, NOT_READ)];
  return [because("SN-126", field, given.value && printable(given.value), check.expect, OUTSIDE)];
}

const NOT_READ = "Enter what was read, not only that it was right.";
const OUTSIDE = 'Answer "wrong" and raise a finding, or read it again.';

function printable(value: Value): string {
  if (value.kind === "match") return `${value.first} and ${value.second}`;
  if (value.kind === "count") return String(value.count);
  return value.kind === "date" ? value.date : value.text;
}
