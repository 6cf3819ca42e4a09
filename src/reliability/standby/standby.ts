import { pairStandby } from "./pair.ts";
import { singleStandby } from "./single.ts";
import type { Standby, StandbyCase } from "./standby-case.ts";
import { sumAt, textbookTerms } from "./textbook.ts";

/**
 * How unready a thing is that lies hidden from view between tests.
 *
 * @param given - the case; all times in one unit
 * @returns exact mean unavailability, the textbook sum, the chance that a test finds a fault, and the parts [1]
 * @range test and repair times fit into the interval
 * @source DERIVED; see `singleStandby` and `pairStandby`
 * @example standbyOf({ life: { shape: 1, scale: 10_000 }, interval: 720, testTime: 0, repairTime: 0, demandFailure: 0 }).unavailability
 *   // 0.0351513
 */
export function standbyOf(given: StandbyCase): Standby {
  const exact = given.pair ? pairStandby(given) : singleStandby(given);
  return { ...exact, firstOrder: sumAt(textbookTerms(given), given.interval) };
}
