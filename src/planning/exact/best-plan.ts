import { nth } from "#base";
import type { Grid } from "../station/grid.ts";
import { ownBound, type Bound } from "../quick/own-bound.ts";
import { leastWaste } from "../quick/least-waste.ts";
import { quickPlan } from "../quick/quick-plan.ts";
import { compareWorth, readPlan } from "../worth/worth.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { yearModel, type Aim, type Known } from "./year-model.ts";

const AIMS: readonly Aim[] = ["short", "late", "openings", "worst", "wasted"];
/** Share of what time is left that one aim may take; the last takes all. */
const SHARE: Readonly<Record<Aim, number>> = { short: 0.5, late: 0.5, openings: 0.6, worst: 0.5, wasted: 1 };
/** Less time than this is not worth a start [s]. */
const LEAST_SECONDS = 0.02;

/** A plan, and what no plan goes below in each aim while the aims before it are as they are. */
export interface BestPlan extends Known {
  readonly bound: Readonly<Record<Aim, number>>;
}

/**
 * The best plan found in the time: the quick one, then each aim in its order made as small as the solver can.
 * @param solver - undefined for the quick plan alone
 * @param seconds - for the solver [s]
 */
export function bestPlan(grid: Grid, solver: LinearSolver | undefined, seconds: number): BestPlan {
  const quick = quickPlan(grid);
  let known: Known = { openings: quick.openings, merit: readPlan(grid, quick.openings) };
  const own = ownBound(grid);
  const bound: Record<Aim, number> = { short: own.short, late: 0, openings: 0, worst: 0, wasted: 0 };
  let left = seconds;
  for (const aim of AIMS) {
    bound[aim] = boundOf(grid, aim, known, own);
    if (known.merit[aim] <= bound[aim] + 1e-6) continue;
    const found = solver && left > LEAST_SECONDS ? improve(grid, solver, known, aim, left * SHARE[aim]) : undefined;
    if (!found) continue;
    left -= found.seconds;
    known = found.known;
    bound[aim] = Math.max(bound[aim], found.bound);
  }
  return { ...known, bound };
}

/** Our own bound where it holds: on later aims only where the plan reaches it in the earlier ones. */
function boundOf(grid: Grid, aim: Aim, { merit }: Known, own: Bound): number {
  if (aim === "short") return own.short;
  if (aim === "late") return own.late;
  if (aim === "openings") return merit.late <= own.late ? own.openings : 0;
  return aim === "worst" && isSeldom(merit, own) ? worstBound(grid, own) : 0;
}

/** Then each kit is opened exactly as often as it must be. */
function isSeldom({ late, openings }: Known["merit"], own: Bound): boolean {
  return late <= own.late && openings <= own.openings;
}

/** All the work spread over all weeks in whole steps, and the longest opening that there must be [min]. */
function worstBound(grid: Grid, { byKit }: Bound): number {
  const step = stepOf(grid, "worst");
  const work = grid.kits.reduce((sum, kit, index) => sum + kit.minutes * nth(byKit, index), 0);
  const longest = grid.kits.map((kit, index) => (nth(byKit, index) > 0 ? kit.minutes : 0));
  return Math.max(Math.ceil(work / grid.weeks / step - 1e-9) * step, ...longest);
}

interface Improved {
  readonly known: Known;
  readonly bound: number;
  readonly seconds: number;
}

function improve(grid: Grid, solver: LinearSolver, known: Known, aim: Aim, seconds: number): Improved | undefined {
  const made = yearModel(grid, known, aim);
  if (!made) return undefined;
  const step = stepOf(grid, aim);
  const solved = solver.solve(made.model, { seconds, gap: step * 0.999, start: made.start });
  const bound = Math.ceil(solved.bound / step - 1e-6) * step;
  if (!solved.values) return { known, bound: Math.min(bound, known.merit[aim]), seconds: solved.seconds };
  const openings = leastWaste(grid, made.openings(solved.values));
  const merit = readPlan(grid, openings);
  const better = compareWorth(merit, known.merit) < 0 ? { openings, merit } : known;
  return { known: better, bound: Math.min(bound, better.merit[aim]), seconds: solved.seconds };
}

/** The least by which two plans can differ in an aim. */
function stepOf(grid: Grid, aim: Aim): number {
  if (aim !== "worst") return 1;
  const whole = grid.kits.every((kit) => Number.isInteger(kit.minutes));
  return whole ? grid.kits.map((kit) => kit.minutes).reduce(commonDivisor, 0) || 1 : 1e-3;
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other);
}
