export { planYear, type PlanningMeans, type YearPlan } from "./plan-year.ts";
export type { LinearModel, LinearSolver, Solved, SolveLimits } from "./exact/linear-solver.ts";
export type { YearStation } from "./station/station.ts";
