export * from "./drill-state.ts";
export { commitmentOf, readNonce, type Planting } from "./commitment.ts";
export { compareDrill, type ComparedFault, type Comparison } from "./compare.ts";
export { trialsOf, type CheckTrial } from "./trials.ts";
export { drillsOn, isHiding, isOfDrill, removalKey } from "./drill-now.ts";
export { drillRefusals } from "./drill-refusals.ts";
export { drillConditions } from "./drill-conditions.ts";
