export type { FaultCase, Move, Step, Test } from "./fault-case.ts";
export { findFault, type FaultPlan } from "./find-fault.ts";
