export { exponentialWithPrior, type PriorFit } from "./exponential-prior.ts";
export type { LifeModel } from "./families.ts";
export { failedAge, fitLife, LEAST_FAILURES, survivalAt, type FailedAge, type LifeFit } from "./fit-life.ts";
export { intervalCensored, type IntervalCensored } from "./interval-censored.ts";
export { failuresIn, isBetween, type LifeRecord } from "./life-record.ts";
export { lastingByLaws, lastingOf, type Lasting } from "./lasting.ts";
export { logRank, type LogRank } from "./log-rank.ts";
export { meanCount, type CountPoint, type Renewals } from "./mean-count.ts";
export { medianOf, productLimit, type MedianLife, type SurvivalPoint } from "./product-limit.ts";
