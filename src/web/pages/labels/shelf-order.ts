import type { Shelf } from "#readiness";

/** Shelves while they are being changed. */
export type ShelfDraft = readonly Shelf[];

/** The kit at a place in the row, one place further to the front. */
export function moveKitUp(kits: readonly string[], at: number): readonly string[] {
  const kit = kits[at];
  if (at === 0 || kit === undefined) return kits;
  return [...kits.slice(0, at - 1), kit, kits[at - 1]!, ...kits.slice(at + 1)];
}

/** With a kit at the end, where it is not on the shelf yet. */
export function addKit(kits: readonly string[], kit: string): readonly string[] {
  return kit === "" || kits.includes(kit) ? kits : [...kits, kit];
}
