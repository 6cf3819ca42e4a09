import { familyOf } from "#kit";
import type { KitState, Turnaround } from "#readiness";

/** One opening of a kit, with all that was answered in it. */
export interface OpeningRead {
  readonly kit: KitState;
  readonly turnaround: Turnaround;
}

/**
 * Every opening that counts of the kits of one pattern, whatever its version: those set aside where two devices opened one
 * kit are left out, and those of a drill, for which faults were planted.
 *
 * @param kits - of the station, those taken off charge too
 * @param pattern - its id, without version
 */
export function openingsOf(kits: readonly KitState[], pattern: string): readonly OpeningRead[] {
  return kits.filter((kit) => familyOf(kit.pattern) === pattern).flatMap(openingsIn);
}

function openingsIn(kit: KitState): readonly OpeningRead[] {
  const counted = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])].filter(
    ({ closed, drill }) => closed?.how !== "set-aside" && drill === undefined,
  );
  return counted.map((turnaround) => ({ kit, turnaround }));
}
