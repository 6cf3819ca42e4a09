import type { Entry } from "../entry.ts";

/** Lines in an order of chance: by one key drawn for each, so that a property that fails can be told again. */
export function shuffled(lines: readonly Entry[], keys: Iterator<number, unknown>): readonly Entry[] {
  return lines
    .map((entry) => ({ entry, key: keys.next().value as number }))
    .toSorted((one, other) => one.key - other.key)
    .map(({ entry }) => entry);
}
