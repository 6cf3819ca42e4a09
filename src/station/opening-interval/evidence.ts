import { sum } from "#base";
import { familyOf, allSteps, type Pattern } from "#kit";
import { demandsOf, hiddenOf, plantedStoppingOf, type KitState, type Turnaround } from "#readiness";
import { foundByCheck, rateOf, startingOf, type Belief, type Looks } from "#reliability";
import type { StartLog } from "../start-chance/index.ts";

/** What the log says that bears on how often kits of a pattern are opened. */
export interface OpeningEvidence {
  readonly kits: number;
  /** How long it really was from one opening of a kit to the next; absent where none was opened twice. */
  readonly apart?: OpenedApart;
  /** Openings after lying closed. */
  readonly looks: number;
  /** Faults found at them that would have stopped the kit. */
  readonly found: number;
  /** How long kits lay closed before them [s]. */
  readonly lay: number;
  /** At which such faults come [1/s]. */
  readonly rate: Belief;
  /** What drills showed of whether an opening finds such a fault; absent where none was planted. */
  readonly drilled?: Drilled;
  /** Times that kits were asked to start. */
  readonly asked: number;
  /** Chance of failing when asked, whatever its age [1]. */
  readonly failing: Belief;
  /** Times that kits were put to work on casualties. */
  readonly calls: number;
  /** Calls on one kit [1/year]. */
  readonly callsPerYear: Belief;
  /** Hands-on work of one opening, all hands together [h]. */
  readonly hours: number;
  /** Out of service for one opening, waits and nights and all: the mean of those in the log, else by the pattern [s]. */
  readonly out: number;
  /** Openings in the log that it is the mean of; 0 where it is the pattern's. */
  readonly timed: number;
  /** Times it is started in one opening: lines at which pulls are counted, else once where it runs at all. */
  readonly starts: number;
}

/** From one opening of a kit to its next [d]. */
export interface OpenedApart {
  readonly count: number;
  readonly median: number;
  readonly quartiles: readonly [number, number];
  /** The longest: what would be after longer than that nobody has seen. */
  readonly longest: number;
}

/** Faults planted in drills that would have stopped the kit. */
export interface Drilled extends Looks {
  /** That an opening finds one [1]. */
  readonly finding: Belief;
  /** Whether the proposal goes by it: fewer plants than {@link LEAST_PLANTED} tell of the prior more than of openings. */
  readonly counts: boolean;
}

const YEAR = 365.25 * 86_400;
/** Judgement. */
export const LEAST_PLANTED = 5;
/** Fewest openings whose time out is taken rather than the pattern's (judgement). */
const LEAST_TIMED = 5;

/**
 * Gathers it over all kits of a pattern, whatever its version, those taken off charge too. Kits are taken as alike.
 *
 * @param pattern - its newest version
 * @param log - the station
 * @param now - RFC 3339
 * @returns undefined where no kit of it ever lay closed between two openings
 * @source rates, calls too: Jeffreys' prior, gamma(1/2, 0), NASA/SP-2009-569; drills: as `foundByCheck`
 */
export function openingEvidence(pattern: Pattern, log: StartLog, now: string): OpeningEvidence | undefined {
  const kits = log.kits.filter((kit) => familyOf(kit.pattern) === pattern.id);
  const hidden = kits.map((kit) => hiddenOf(kit, log.patterns.get(kit.pattern) ?? pattern, log.casualties));
  const lay = sum(hidden.map((one) => one.lay));
  if (lay <= 0) return undefined;
  const found = sum(hidden.map((one) => one.found));
  const drilled = drilledOf(kits.map((kit) => plantedStoppingOf(kit, log.patterns.get(kit.pattern) ?? pattern)));
  const demands = kits.flatMap((kit) => demandsOf(kit, log.casualties, log.patterns.get(kit.pattern)));
  const failures = demands.filter(({ worked }) => !worked).length;
  const calls = demands.filter(({ on }) => on === "casualty").length;
  return {
    kits: kits.length,
    ...apartOf(kits),
    looks: sum(hidden.map(({ looks }) => looks)),
    found,
    lay,
    rate: rateOfFaults(found, lay),
    ...(drilled && { drilled }),
    asked: demands.length,
    failing: failingOf(failures, demands.length),
    calls,
    callsPerYear: rateOfFaults(calls, Math.max(0.1, sum(kits.map((kit) => yearsOf(kit, now))))),
    ...workOf(pattern),
    ...timeOut(kits, pattern),
  };
}

/** Every opening counts that was not set aside, a drill's too: the kit was opened. */
function apartOf(kits: readonly KitState[]): Pick<OpeningEvidence, "apart"> {
  const days = kits.flatMap((kit) => {
    const all = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])];
    const opened = all.filter(({ closed }) => closed?.how !== "set-aside");
    const at = opened.map((one) => Date.parse(one.opened.at)).toSorted((one, other) => one - other);
    return at.slice(1).map((time, i) => (time - at[i]!) / 86_400_000);
  });
  if (days.length === 0) return {};
  const sorted = days.toSorted((one, other) => one - other);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return { apart: { count: days.length, median: at(0.5), quartiles: [at(0.25), at(0.75)], longest: at(1) } };
}

/** The belief about the rate at which something comes that came so often in a time, in its unit. */
export function rateOfFaults(found: number, lay: number): Belief {
  return rateOf({ failures: found, time: lay }, { kind: "gamma", a: 0.5, b: 0 }).rate;
}

function drilledOf(drills: readonly Looks[]): Drilled | undefined {
  const found = sum(drills.map((one) => one.found));
  const planted = sum(drills.map((one) => one.planted));
  if (planted === 0) return undefined;
  return { found, planted, finding: foundByCheck({ found, planted }).chance, counts: planted >= LEAST_PLANTED };
}

function failingOf(failures: number, trials: number): Belief {
  return startingOf({ least: failures, most: failures, trials }, { kind: "beta", a: 0.5, b: 0.5 }).failing;
}

function workOf(pattern: Pattern): Pick<OpeningEvidence, "hours" | "starts"> {
  const steps = stepsAlways(pattern);
  const handsOn = sum(steps.map(({ needs }) => needs.minutes * needs.people)) / 60;
  const timed = (kind: "pulls" | "run") => steps.filter(({ timer }) => timer?.kind === kind).length;
  return { hours: handsOn, starts: timed("pulls") || Math.min(1, timed("run")) };
}

function stepsAlways(pattern: Pattern) {
  return allSteps(pattern).filter(({ optional, after }) => !optional && after === undefined);
}

/**
 * How long kits are really out for an opening, seal to seal. Left out: drills, openings not sealed again, those typed up from
 * a card, and those shorter than the pattern's own clocks, which nobody did in that time.
 */
function timeOut(kits: readonly KitState[], pattern: Pattern): Pick<OpeningEvidence, "out" | "timed"> {
  const steps = stepsAlways(pattern);
  const waits = (kinds: readonly string[]) =>
    sum(steps.map(({ timer }) => (timer && kinds.includes(timer.kind) && "atLeast" in timer ? timer.atLeast : 0)));
  const lasted = kits.flatMap(({ turnarounds }) => turnarounds.flatMap(secondsOf));
  const took = lasted.filter((seconds) => seconds > waits(["wait", "run"]));
  if (took.length >= LEAST_TIMED) return { out: sum(took) / took.length, timed: took.length };
  return { out: sum(steps.map(({ needs }) => needs.minutes * 60)) + waits(["wait"]), timed: 0 };
}

function secondsOf({ opened, closed, drill, answers }: Turnaround): readonly number[] {
  const isTyped = Object.values(answers).some(({ fromCard }) => fromCard);
  if (closed?.how !== "sealed" || drill !== undefined || isTyped) return [];
  return [(Date.parse(closed.at) - Date.parse(opened.at)) / 1000];
}

/** On charge until it was taken off, or until now. */
function yearsOf({ enrolled, retired }: KitState, now: string): number {
  return Math.max(0, Date.parse(retired?.at ?? now) - Date.parse(enrolled.at)) / 1000 / YEAR;
}
