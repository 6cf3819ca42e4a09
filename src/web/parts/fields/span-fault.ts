import { parseSpan } from "#base";
import type { Words } from "#words";

/** What is wrong with a span as it is typed; undefined where it is one. */
export function spanFault(text: string, words: Words["parts"]): string | undefined {
  return isSpan(text) ? undefined : words.spanFault();
}

/** Whether a text is a span: "6 weeks", "24 months". */
export function isSpan(text: string): boolean {
  try {
    parseSpan(text.trim());
    return true;
  } catch {
    return false;
  }
}
