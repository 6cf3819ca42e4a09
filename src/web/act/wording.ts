import type { Check } from "#kit";
import { isCountSaid, sayGivenSeen } from "#readiness";
import type { Words } from "#words";
import type { Answered } from "./lines.ts";
import { writeValue } from "./reading.ts";

/** What answers are told in. */
export interface AnswerWords {
  readonly act: Words["act"];
  readonly parts: Words["parts"];
}

/** An answer as the record tells it: the words of the button, and the reading. */
export function sayAnswer(answered: Answered, check: Check | undefined, words: AnswerWords): string {
  const { value } = answered;
  const answer = sayGiven(answered, check, words.act);
  if (!value || isCountSaid(check, answered)) return answer;
  return words.act.withReading({ answer, value: writeValue(value, words.parts) });
}

function sayGiven({ answer, why, value }: Answered, check: Check | undefined, words: Words["act"]): string {
  if (answer === "seen") return sayGivenSeen(check, value, words);
  if (answer === "wrong") return words.foundWrong();
  return why ? words.notPossibleWhy({ why }) : words.notPossible();
}

/** Said after an answer that was typed up from paper. */
export function sayCard({ fromCard, cardAt }: Pick<Answered, "fromCard" | "cardAt">, words: Words["act"]): string {
  if (fromCard !== true) return "";
  return cardAt === undefined ? words.fromCard() : words.fromCardOf({ at: cardAt.slice(0, 16).replace("T", " ") });
}
