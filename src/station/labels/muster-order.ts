import type { KitState, Place, Shelf } from "#readiness";

/** A kit where a muster comes to it. */
export interface KitOnShelf {
  readonly kit: KitState;
  /** Absent for a kit that stands on no shelf. */
  readonly shelf?: Shelf;
}

/** Kits of a place in the order in which a muster goes round: shelf by shelf, then by name those that stand on none. */
export function musterOrder(
  kits: readonly KitState[],
  { shelves = [] }: Pick<Place, "shelves">,
): readonly KitOnShelf[] {
  const left = new Map(kits.map((kit) => [kit.id, kit]));
  const shelved = shelves.flatMap((shelf) =>
    shelf.kits.flatMap((id) => {
      const kit = left.get(id);
      left.delete(id);
      return kit ? [{ kit, shelf }] : [];
    }),
  );
  const others = [...left.values()].toSorted((one, other) =>
    one.name.localeCompare(other.name, "en", { numeric: true }),
  );
  return [...shelved, ...others.map((kit) => ({ kit }))];
}
