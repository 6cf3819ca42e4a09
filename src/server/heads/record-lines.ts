import type { Entry, KeptEntry, LinesProof } from "#log";
import type { Parts } from "../parts.ts";

/** Proves lines, place by place; nothing where nothing signs. */
export async function proveLines(
  { store, headDesk }: Parts,
  entries: readonly Entry[],
): Promise<readonly LinesProof[]> {
  if (headDesk === undefined) return [];
  const kept = (await Promise.all(entries.map(({ id }) => store.find(id)))).filter((one) => one !== undefined);
  const places = [...new Set(kept.map(({ entry }) => entry.place))];
  const proofs = places.map((place) =>
    headDesk.prove(place, inOrder(kept.filter(({ entry }) => entry.place === place))),
  );
  return (await Promise.all(proofs)).filter((proof) => proof !== undefined);
}

function inOrder(lines: readonly KeptEntry[]): KeptEntry[] {
  return lines.toSorted((one, other) => one.seq - other.seq);
}
