import { parseSpan } from "#base";

/** What is wrong with a span as it is typed; undefined where it is one. */
export function spanFault(text: string): string | undefined {
  try {
    parseSpan(text.trim());
    return undefined;
  } catch {
    return 'Write it as "6 weeks" or "24 months".';
  }
}
