export type { Demand } from "./demand.ts";
export { demandsOf } from "./demands.ts";
export { failureOf } from "./failure-of.ts";
export { hiddenOf, type HiddenRecord } from "./hidden.ts";
export { inCommonOf, type InCommon } from "./in-common.ts";
export { plantedStoppingOf, type PlantedStopping } from "./planted.ts";
export { lastProved } from "./proved.ts";
