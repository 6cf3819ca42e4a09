import type { Check } from "#kit";
import type { Entry } from "#log";
import type { Bodies } from "../kinds/kinds.ts";

/** What the button of an answer says, on screen and on paper: what was seen, never only "done". */
export function saySeen(check: Check | undefined): string {
  return check ? `Seen: ${lowerFirst(trimDot(check.expect))}` : "Done as written";
}

function trimDot(text: string): string {
  return text.trim().replace(/\.$/, "");
}

/** Lowers the first letter of a sentence, but not of an abbreviation or a mark such as "SN". */
function lowerFirst(text: string): string {
  return /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** The second person whom a line names who saw the container closed; nothing where it is another line or names none. */
export function sealWitness({ kind, body }: Pick<Entry, "kind" | "body">): string | undefined {
  return kind === "sealed" ? (body as Bodies["sealed"]).witness : undefined;
}
