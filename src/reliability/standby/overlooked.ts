import { hazardBy, lossOver } from "./life-law.ts";
import type { StandbyCase } from "./standby-case.ts";

/** How an interval begins: good, shortened by a repair, or with a fault that the test before it overlooked. */
interface Begun {
  /** Time lost in it. */
  readonly lost: number;
  /** Chance that the test at its end finds a fault, and that it overlooks one [1]. */
  readonly found: number;
  readonly left: number;
}

/** Shares of the time and of the tests, as `singleStandby` puts them together. */
export interface Cycle {
  readonly hidden: number;
  readonly repair: number;
  readonly found: number;
}

/**
 * One thing whose tests may overlook a hidden fault; each looks afresh, so that the next may find it.
 *
 * Shares of intervals begun good, mended and with a fault left: C : R : L, C = 1 − F₁ − M₁, R = F₀ + M₀, L = (C M₀ + R M₁)/θ,
 * F and M the chances that an interval ends with a fault found and with one overlooked.
 *
 * @param given - the case, no pair, no overhaul; `missed` below 1
 * @returns shares [1]
 * @range a demand that fails at the test counts as found; a fault that was overlooked is there over the whole interval
 * @source DERIVED: three-state chain in balance; held to intervals played one by one
 */
export function overlookedCycle(given: StandbyCase): Cycle {
  const { interval, testTime, repairTime, missed = 0 } = given;
  const [good, mended] = [begunGood(given, 0), begunGood(given, repairTime)];
  const left: Begun = { lost: interval - testTime, found: 1 - missed, left: missed };
  const clean = 1 - mended.found - mended.left;
  const afterFound = good.found + good.left;
  const afterLeft = (clean * good.left + afterFound * mended.left) / (1 - missed);
  const whole = clean + afterFound + afterLeft;
  const mean = (part: keyof Begun) => (clean * good[part] + afterFound * mended[part] + afterLeft * left[part]) / whole;
  return {
    hidden: mean("lost") / interval,
    repair: ((afterFound / whole) * repairTime) / interval,
    found: mean("found"),
  };
}

function begunGood(
  { life, interval, testTime, demandFailure, harm = 0, missed = 0 }: StandbyCase,
  repair: number,
): Begun {
  const stretch = interval - testTime - repair;
  const isThere = 1 - (1 - harm) * Math.exp(-hazardBy(life, stretch));
  return {
    lost: harm * stretch + (1 - harm) * lossOver(life, stretch),
    found: isThere * (1 - missed) + (1 - isThere) * demandFailure,
    left: isThere * missed,
  };
}
