export type { FaultCase, Move, FaultStep, Test } from "./fault-case.ts";
export { findFault, type FaultPlan } from "./find-fault.ts";
