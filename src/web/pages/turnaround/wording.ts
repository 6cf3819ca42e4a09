import type { Check } from "#kit";
import type { Answer } from "#readiness";
import type { Answered } from "./lines.ts";
import { writeValue } from "./reading.ts";

/** The button that says what was seen, never only "done". */
export function saySeen(check: Check | undefined): string {
  return check ? `Seen: ${lowerFirst(trimDot(check.expect))}` : "Done as written";
}

/** An answer as the record tells it: the words of the button, and the reading. */
export function sayAnswer(answered: Answered, check: Check | undefined): string {
  const value = answered.value ? ` (${writeValue(answered.value)})` : "";
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

function trimDot(text: string): string {
  return text.trim().replace(/\.$/, "");
}

/** Lowers the first letter of a sentence, but not of an abbreviation or a mark such as "SN". */
function lowerFirst(text: string): string {
  return /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
