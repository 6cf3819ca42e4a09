import type { Pattern } from "#kit";

/** The newest version of a pattern, which is what a question means by its id alone. */
export function newestOf(patterns: readonly Pattern[], id: string): Pattern | undefined {
  return patterns.filter((one) => one.id === id).toSorted((a, b) => b.version - a.version)[0];
}
