import { gaussNodes } from "#numerics";
import { hazardBy } from "./life-law.ts";
import type { Standby, StandbyCase } from "./standby-case.ts";

const PLACES = gaussNodes(48, 0, 1);

/** Chances of a pair at one instant: both down by hidden faults, and both good. */
interface Instant {
  readonly bothDown: number;
  readonly bothGood: number;
}

/**
 * Exact mean chance that neither of two like things is there, either being enough, each tested every T.
 *
 * With hazards H of the ages a, b since each was last tested, and a share β of the failures striking both:
 * P(both down) = F(a) F(b) + e^(−H(a) − H(b)) (e^(βH(min(a, b))) − 1)
 *
 * @param given - the case, with a pair; no repair time and no coverage
 * @returns unavailability of the pair with its parts; `faultFound` is of one of the two [1]
 * @range staggered with a shared share only at a constant rate
 * @source DERIVED; 1/3 and 5/24 (λT)² for rare failures: NUREG-0492 / WASH-1400 (FROM MEMORY)
 */
export function pairStandby(given: StandbyCase): Omit<Standby, "firstOrder"> {
  const isStaggered = given.pair?.tested === "staggered";
  const span = isStaggered ? given.interval / 2 : given.interval;
  const lag = isStaggered ? given.interval / 2 : 0;
  const served = span - given.testTime;
  const hidden = mean(served, (s) => instantOf(given, s, s + lag).bothDown) / span;
  const refused = mean(served, (s) => refusedAt(given, instantOf(given, s, s + lag))) / span;
  const testing = isStaggered ? testingAlone(given, lag) / span : given.testTime / span;
  const parts = { hidden, testing, repair: 0, demand: refused };
  const kept = Math.exp(-hazardBy(given.life, given.interval - given.testTime));
  return { unavailability: hidden + testing + refused, faultFound: 1 - (1 - given.demandFailure) * kept, parts };
}

function instantOf({ life, pair }: StandbyCase, younger: number, older: number): Instant {
  const [a, b] = [hazardBy(life, younger), hazardBy(life, older)];
  const apart = Math.exp(-a - b);
  const tied = Math.expm1((pair?.shared ?? 0) * a);
  return { bothDown: Math.expm1(-a) * Math.expm1(-b) + apart * tied, bothGood: apart * (1 + tied) };
}

/** Chance that what is good refuses when asked, and the other is no help. */
function refusedAt({ demandFailure: q }: StandbyCase, { bothDown, bothGood }: Instant): number {
  return q * (1 - bothDown - bothGood) + q * q * bothGood;
}

/** While one is tested the other stands alone. */
function testingAlone({ life, testTime, demandFailure }: StandbyCase, lag: number): number {
  const notThere = (s: number) => 1 - (1 - demandFailure) * Math.exp(-hazardBy(life, lag - testTime + s));
  return mean(testTime, notThere);
}

/** ∫₀ʷ f, with places gathered at the beginning, where ages are young. */
function mean(width: number, f: (s: number) => number): number {
  return PLACES.reduce((sum, { at, weight }) => sum + weight * 2 * at * width * f(width * at * at), 0);
}
