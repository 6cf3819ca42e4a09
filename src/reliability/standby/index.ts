export { standbyOf } from "./standby.ts";
export type { Standby, StandbyCase, StandbyParts } from "./standby-case.ts";
export { bestInterval, type BestInterval, type IntervalPoint } from "./best-interval.ts";
export { costOfTest, type CostsAYear, type IntervalCosts } from "./costs.ts";
export type { LifeLaw } from "./life-law.ts";
