import { canonicalText, hashText } from "#log";
import type { DrawnLine } from "./visit-state.ts";

/** What a draw needs of a kit. */
export interface Drawable {
  readonly kit: { readonly id: string };
  readonly lines: readonly DrawnLine[];
}

/**
 * Kits drawn by a seed: those whose SHA-256 of seed and id comes first. Anybody who has the seed draws the same.
 *
 * @param from - kits that can be drawn, in any order
 * @param seed - of chance, fixed before anybody knows what it draws
 * @param size - how many, whole; all where there are fewer
 * @returns by id
 * @source sampling by the order of hashes; SHA-256: FIPS 180-4; canonical JSON: RFC 8785
 */
export function drawKits<Kit extends Drawable>(from: readonly Kit[], seed: string, size: number): readonly Kit[] {
  const drawn = first(from, ({ kit }) => [seed, kit.id], size);
  return from.filter((one) => drawn.has(one));
}

/**
 * Lines of these kits drawn by a seed, as {@link drawKits} does.
 *
 * @param of - kits drawn
 * @param size - how many lines, whole
 * @returns in the order in which their kits and lines stand
 */
export function drawLines(of: readonly Drawable[], seed: string, size: number): readonly DrawnLine[] {
  const all = of.flatMap(({ lines }) => lines);
  const drawn = first(all, ({ kit, step, check }) => [seed, kit, step, check], size);
  return all.filter((one) => drawn.has(one));
}

function first<One>(from: readonly One[], name: (one: One) => readonly string[], size: number): ReadonlySet<One> {
  const marked = from.map((one) => ({ one, mark: hashText(canonicalText(name(one))) }));
  const ordered = marked.toSorted((a, b) => (a.mark < b.mark ? -1 : 1));
  return new Set(ordered.slice(0, size).map(({ one }) => one));
}
