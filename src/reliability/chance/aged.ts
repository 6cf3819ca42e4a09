import { numberAt } from "#base";
import type { Belief } from "./belief.ts";
import { VALUES, type Spread } from "./spread.ts";

/** What is believed of one that lies unseen: failing when just proved, and the rate at which hidden faults come. */
export interface AgedCase {
  /** Chance of failing when asked with no hidden fault, as equally likely values [1]. */
  readonly asked: Spread;
  /** Rate of hidden faults, as equally likely values [1/time]. */
  readonly hidden: Spread;
}

/**
 * What is believed of the chance that it works when asked, so long after it was last proved.
 *
 * S(t) = (1 − q) e^(−λt), q and λ being unknown each on its own
 *
 * @param given - the beliefs about q and λ
 * @param age - t since it was last proved, at least 0 [time of the rate]
 * @returns belief about working when asked [1]
 * @range percentiles within about 1 % of the belief
 * @source the standby unavailability of an untested interval, NUREG-0492 (FROM MEMORY); the mixture: DERIVED
 */
export function workingAt({ asked, hidden }: AgedCase, age: number): Belief {
  const values = asked.flatMap((q) => hidden.map((rate) => (1 - q) * Math.exp(-rate * age)));
  const ordered = Float64Array.from(values).sort();
  const at = (chance: number) => numberAt(ordered, Math.min(ordered.length - 1, Math.floor(chance * ordered.length)));
  const mean = values.reduce((sum, one) => sum + one, 0) / (VALUES * VALUES);
  return { mean, p05: at(0.05), p50: at(0.5), p95: at(0.95) };
}
