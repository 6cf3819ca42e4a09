import type { ChainHead } from "#log";
import type { Cursor } from "../ports.ts";

/** An append that kept nothing, since these places had moved on. */
export interface Moved {
  readonly moved: readonly string[];
}

/** Places that do not stand where an append needs them: every store asks this under the lock under which it writes. */
export function movedFrom(onlyAt: Cursor, heads: ReadonlyMap<string, ChainHead>): readonly string[] {
  return Object.keys(onlyAt).filter((place) => onlyAt[place] !== (heads.get(place)?.seq ?? 0));
}
