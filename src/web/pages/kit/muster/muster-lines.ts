import { dayIn } from "#base";
import type { Words } from "#words";
import type { KitState, Place } from "#readiness";
import { musterOrder } from "#station";

/** One kit at a muster: to be seen, seen today already, or not there to be seen. */
export type MusterLine = {
  /** Name of the shelf that it stands on. */
  readonly shelf?: string;
} & (
  | { readonly kind: "to-see"; readonly kit: KitState }
  | { readonly kind: "seen"; readonly kit: KitState; readonly at: string; readonly by: string }
  | { readonly kind: "not-here"; readonly kit: KitState; readonly why: string }
);

/** Every kit of a place as a muster finds it on a day, shelf by shelf, then by name. What the record says of its seal is not in it. */
export function musterLines(
  kits: readonly KitState[],
  place: Place,
  today: string,
  words: Words["muster"],
): readonly MusterLine[] {
  const here = kits.filter((kit) => kit.place === place.id);
  return musterOrder(here, place).map(({ kit, shelf }) => ({
    ...lineOf(kit, place, today, words),
    ...(shelf && { shelf: shelf.name }),
  }));
}

function lineOf(kit: KitState, place: Place, today: string, words: Words["muster"]): MusterLine {
  if (kit.custody.kind === "away") return { kind: "not-here", kit, why: words.away({ vessel: kit.custody.to }) };
  if (kit.turnaround) return { kind: "not-here", kit, why: words.openTurnaround() };
  const last = kit.lastMuster;
  if (last && dayIn(place.zone, last.at) === today) return { kind: "seen", kit, at: last.at, by: last.by };
  return { kind: "to-see", kit };
}

/** How far the muster is: how many were seen today of those that can be. */
export function musterProgress(lines: readonly MusterLine[]): { readonly seen: number; readonly of: number } {
  const seen = lines.filter(({ kind }) => kind === "seen").length;
  return { seen, of: lines.filter(({ kind }) => kind !== "not-here").length };
}
