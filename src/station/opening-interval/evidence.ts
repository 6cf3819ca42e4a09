import { familyOf, allSteps, type Pattern } from "#kit";
import { demandsOf, hiddenOf, type KitState } from "#readiness";
import { rateOf, startingOf, type Belief } from "#reliability";
import type { StartLog } from "../start-chance/index.ts";

/** What the log says that bears on how often kits of a pattern are opened. */
export interface OpeningEvidence {
  readonly kits: number;
  /** Openings after lying closed. */
  readonly looks: number;
  /** Faults found at them that would have stopped the kit. */
  readonly found: number;
  /** How long kits lay closed before them [s]. */
  readonly lay: number;
  /** At which such faults come [1/s]. */
  readonly rate: Belief;
  /** Times that kits were asked to start. */
  readonly asked: number;
  /** Chance of failing when asked, whatever its age: mean [1]. */
  readonly failing: number;
  /** Times that kits were put to work on casualties. */
  readonly calls: number;
  /** Calls on one kit [1/year]. */
  readonly callsPerYear: number;
  /** Hands-on work of one opening, all hands together [h]. */
  readonly hours: number;
  /** Out of service for one opening, waits and all [s]. */
  readonly out: number;
}

const YEAR = 365.25 * 86_400;

/**
 * Gathers it over all kits of a pattern, whatever its version, those taken off charge too. Kits are taken as alike.
 *
 * @param pattern - its newest version
 * @param log - the station
 * @param now - RFC 3339
 * @returns undefined where no kit of it ever lay closed between two openings
 * @source rates: Jeffreys' prior, gamma(1/2, 0), NASA/SP-2009-569
 */
export function openingEvidence(pattern: Pattern, log: StartLog, now: string): OpeningEvidence | undefined {
  const kits = log.kits.filter((kit) => familyOf(kit.pattern) === pattern.id);
  const hidden = kits.map((kit) => hiddenOf(kit, log.patterns.get(kit.pattern) ?? pattern));
  const lay = total(hidden.map((one) => one.lay));
  if (lay <= 0) return undefined;
  const found = total(hidden.map((one) => one.found));
  const demands = kits.flatMap((kit) => demandsOf(kit, log.casualties));
  const failures = demands.filter(({ worked }) => !worked).length;
  const calls = demands.filter(({ on }) => on === "casualty").length;
  return {
    kits: kits.length,
    looks: total(hidden.map(({ looks }) => looks)),
    found,
    lay,
    rate: rateOfFaults(found, lay),
    asked: demands.length,
    failing: failingOf(failures, demands.length),
    calls,
    callsPerYear: (calls + 0.5) / Math.max(0.1, total(kits.map((kit) => yearsOf(kit, now)))),
    ...workOf(pattern),
  };
}

/** The belief about the rate at which hidden faults come [1/s]. */
export function rateOfFaults(found: number, lay: number): Belief {
  return rateOf({ failures: found, time: lay }, { kind: "gamma", a: 0.5, b: 0 }).rate;
}

function failingOf(failures: number, trials: number): number {
  return startingOf({ least: failures, most: failures, trials }, { kind: "beta", a: 0.5, b: 0.5 }).failing.mean;
}

function workOf(pattern: Pattern): Pick<OpeningEvidence, "hours" | "out"> {
  const steps = allSteps(pattern).filter(({ optional, after }) => !optional && after === undefined);
  const handsOn = total(steps.map(({ needs }) => needs.minutes * needs.people)) / 60;
  const inTurn = total(steps.map(({ needs }) => needs.minutes * 60));
  const waits = total(steps.map(({ timer }) => (timer?.kind === "wait" ? timer.atLeast : 0)));
  return { hours: handsOn, out: inTurn + waits };
}

/** On charge until it was taken off, or until now. */
function yearsOf({ enrolled, retired }: KitState, now: string): number {
  return Math.max(0, Date.parse(retired?.at ?? now) - Date.parse(enrolled.at)) / 1000 / YEAR;
}

function total(figures: readonly number[]): number {
  return figures.reduce((sum, one) => sum + one, 0);
}
