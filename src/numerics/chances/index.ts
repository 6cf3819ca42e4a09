export { betaChance, betaQuantile, logBeta } from "./beta.ts";
export { gammaQuantile } from "./gamma.ts";
export { poissonChances } from "./poisson.ts";
export { sumLaw } from "./sum-law.ts";
export { quantileInLogs } from "./quantile.ts";
export { digamma } from "./digamma.ts";
