export { cusum, ewma, type CusumPoint, type EwmaPoint, type Observation } from "./charts.ts";
export { leastReadings, mannKendall, type SlowDrift } from "./mann-kendall.ts";
export { eventsIn, laplace, powerLaw, type PowerLaw, type Recurrences } from "./recurrences.ts";
export { cusumRunLength, ewmaRunLength, type Sides } from "./run-length.ts";
