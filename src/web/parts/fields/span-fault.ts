import { lastingSpanFault } from "#base";
import type { Words } from "#words";

/** What is wrong with a span as it is typed; undefined where it is one that an entry may hold. */
export function spanFault(text: string, words: Words["parts"]): string | undefined {
  const fault = lastingSpanFault(text);
  if (fault === undefined) return undefined;
  return fault === "none" ? words.spanFault() : words.spanTooLong();
}

/** Whether a text is a span that something takes or keeps for: "6 weeks", "24 months". */
export function isSpan(text: string): boolean {
  return lastingSpanFault(text) === undefined;
}
