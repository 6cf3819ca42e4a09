import { hazardBy, lossWhereAged } from "./life-law.ts";
import { overlookedCycle } from "./overlooked.ts";
import type { Standby, StandbyCase, StandbyParts } from "./standby-case.ts";

type Outcome = Omit<Standby, "firstOrder">;

/** What one round from overhaul to overhaul comes to, by whether the first test found a fault. */
interface Round {
  readonly lost: number;
  readonly repair: number;
  readonly found: number;
  /** Chance that the test which ends the round finds a fault. */
  readonly last: number;
}

/** One interval between tests: when it begins, how long it is, and whether the overhaul ends it. */
interface Stretch {
  readonly from: number;
  readonly length: number;
  readonly isLast: boolean;
}

/**
 * Exact mean unavailability of one thing tested on a fixed clock.
 *
 * Two kinds of interval follow each other, after a test that found a fault and after one that found none; their shares
 * are those of the two-state chain in balance. After a mended fault it is as good as new.
 *
 * @param given - the case, with no pair
 * @returns unavailability with its parts [1]
 * @range test and repair fit into the interval
 * @source DERIVED: exact two-state cycle; forms of Apostolakis & Chu, Nuclear Technology 50 (1980) 5-15 (FROM MEMORY)
 */
export function singleStandby(given: StandbyCase): Outcome {
  if (given.missed) return overlookedStandby(given);
  const stretches = stretchesOf(given);
  const [clean, faulty] = [roundFrom(given, stretches, 0), roundFrom(given, stretches, 1)];
  const first = clean.last / (1 - (faulty.last - clean.last));
  const mixed = (part: "lost" | "repair" | "found") => (1 - first) * clean[part] + first * faulty[part];
  const whole = given.coverage?.overhaul ?? given.interval;
  const hidden = mixed("lost") / whole;
  const testing = (stretches.length * given.testTime) / whole;
  const repair = mixed("repair") / whole;
  const demand = given.demandFailure * (1 - hidden - testing - repair);
  return outcomeOf({ hidden, testing, repair, demand }, mixed("found") / stretches.length);
}

function overlookedStandby(given: StandbyCase): Outcome {
  const { hidden, repair, found } = overlookedCycle(given);
  const testing = given.testTime / given.interval;
  const demand = given.demandFailure * (1 - hidden - testing - repair);
  return outcomeOf({ hidden, testing, repair, demand }, found);
}

function outcomeOf(parts: StandbyParts, faultFound: number): Outcome {
  return { unavailability: parts.hidden + parts.testing + parts.repair + parts.demand, faultFound, parts };
}

/** Tests every interval until the overhaul; a rest too short to be tested is left to the overhaul. */
function stretchesOf({ interval, coverage, testTime, repairTime }: StandbyCase): readonly Stretch[] {
  const whole = coverage?.overhaul ?? interval;
  const times = Math.max(1, Math.floor(whole / interval + 1e-9));
  const rest = whole - times * interval;
  const isRestTested = rest > Math.max(1e-9 * interval, testTime + repairTime);
  const count = times + (isRestTested ? 1 : 0);
  return Array.from({ length: count }, (_, k) => {
    const isLast = k === count - 1;
    return { from: k * interval, length: (isLast ? whole : (k + 1) * interval) - k * interval, isLast };
  });
}

function roundFrom(given: StandbyCase, stretches: readonly Stretch[], first: number): Round {
  const round = { lost: 0, repair: 0, found: first, last: first };
  for (const stretch of stretches) {
    const [good, mended] = [after(given, stretch, 0), after(given, stretch, given.repairTime)];
    round.lost += (1 - round.last) * good.lost + round.last * mended.lost;
    round.repair += round.last * given.repairTime;
    round.last = (1 - round.last) * good.found + round.last * mended.found;
    if (!stretch.isLast) round.found += round.last;
  }
  return round;
}

/** Time lost in an interval and the chance that its end finds a fault, after a repair of this length at its beginning. */
function after(given: StandbyCase, { from, length, isLast }: Stretch, repair: number) {
  const { life, testTime, demandFailure, harm = 0 } = given;
  const covered = given.coverage?.share ?? 1;
  const stretch = length - testTime - repair;
  const age = from === 0 ? 0 : from + repair;
  const seen = covered * hazardBy(life, stretch);
  const unseen = isLast ? (1 - covered) * hazardBy(life, age + stretch) : 0;
  return {
    lost: harm * stretch + (1 - harm) * lossWhereAged(life, covered, age, stretch),
    found: 1 - (1 - demandFailure) * (1 - harm) * Math.exp(-seen - unseen),
  };
}
