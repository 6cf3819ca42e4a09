export { demandsOf, type Demand } from "./demands.ts";
export { hiddenOf, type HiddenRecord } from "./hidden.ts";
export { inCommonOf, type InCommon } from "./in-common.ts";
