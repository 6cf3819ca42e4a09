export { failureRateQuestion } from "./failure-rate.ts";
export { foundByCheckQuestion } from "./found-by-check.ts";
export { intervalQuestion } from "./interval.ts";
export { lifetimesQuestion } from "./lifetimes.ts";
export { sparesQuestion } from "./spares.ts";
export { standbyQuestion } from "./standby.ts";
export { startChanceQuestion } from "./start-chance.ts";
export { trendQuestion } from "./trend.ts";
