import type { Check } from "#kit";
import { isCountSaid, saySeen, type Answer } from "#readiness";
import type { Answered } from "./lines.ts";
import { writeValue } from "./reading.ts";

/** An answer as the record tells it: the words of the button, and the reading. */
export function sayAnswer(answered: Answered, check: Check | undefined): string {
  const value = answered.value && !isCountSaid(check, answered) ? ` (${writeValue(answered.value)})` : "";
  const words: Readonly<Record<Answer, string>> = {
    seen: saySeen(check),
    wrong: "Found wrong",
    "not-possible": `Not possible${answered.why ? `: ${answered.why}` : ""}`,
  };
  return `${words[answered.answer]}${value}`;
}

/** Said after an answer that was typed up from paper. */
export function sayCard({ fromCard, cardAt }: Pick<Answered, "fromCard" | "cardAt">): string {
  if (fromCard !== true) return "";
  return cardAt === undefined
    ? ", from a paper card"
    : `, from a paper card of ${cardAt.slice(0, 16).replace("T", " ")}`;
}
