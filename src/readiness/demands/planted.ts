import type { Pattern } from "#kit";
import { compareDrill } from "../drill/compare.ts";
import type { KitState } from "../state.ts";
import { stoppingModes } from "./stopping-modes.ts";

/** Faults planted in drills that would have stopped the kit, and how many of them the opening found. */
export interface PlantedStopping {
  readonly found: number;
  readonly planted: number;
}

/**
 * Whether openings find what would stop a kit, by the drills on it that were compared: an opening found a fault where
 * anything in it did, looks or the run.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to
 * @returns faults of modes by which it does not start, prime or deliver
 */
export function plantedStoppingOf(kit: Pick<KitState, "findings" | "drills">, pattern: Pattern): PlantedStopping {
  const stopping = stoppingModes(pattern);
  const compared = (kit.drills ?? []).filter(({ ended }) => ended?.how === "compared");
  const faults = compared
    .flatMap((drill) => compareDrill(kit, drill, pattern).faults)
    .filter(({ mode }) => stopping.has(mode));
  return { planted: faults.length, found: faults.filter(({ found }) => found !== undefined).length };
}
