import { dayIn } from "#base";
import type { KitState, Place } from "#readiness";

/** One kit at a muster: to be seen, seen today already, or not there to be seen. */
export type MusterLine =
  | { readonly kind: "to-see"; readonly kit: KitState }
  | { readonly kind: "seen"; readonly kit: KitState; readonly at: string; readonly by: string }
  | { readonly kind: "not-here"; readonly kit: KitState; readonly why: string };

/** Every kit of a place as a muster finds it on a day, by name. What the record says of its seal is not in it. */
export function musterLines(kits: readonly KitState[], place: Place, today: string): readonly MusterLine[] {
  const here = kits.filter((kit) => kit.place === place.id);
  const sorted = here.toSorted((one, other) => one.name.localeCompare(other.name, "en", { numeric: true }));
  return sorted.map((kit) => lineOf(kit, place, today));
}

function lineOf(kit: KitState, place: Place, today: string): MusterLine {
  if (kit.custody.kind === "away") return { kind: "not-here", kit, why: `Away, with ${kit.custody.to}` };
  if (kit.turnaround) return { kind: "not-here", kit, why: "Open for a turnaround" };
  const last = kit.lastMuster;
  if (last && dayIn(place.zone, last.at) === today) return { kind: "seen", kit, at: last.at, by: last.by };
  return { kind: "to-see", kit };
}

/** How far the muster is: how many were seen today of those that can be. */
export function musterProgress(lines: readonly MusterLine[]): { readonly seen: number; readonly of: number } {
  const seen = lines.filter(({ kind }) => kind === "seen").length;
  return { seen, of: lines.filter(({ kind }) => kind !== "not-here").length };
}
