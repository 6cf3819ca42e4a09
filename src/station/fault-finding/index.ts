export { endedBy, nextTry, type FaultAdvice, type Likely, type Where } from "./next-try.ts";
export { nextPumps } from "./next-pumps.ts";
export { findingsByMode } from "./findings-by-mode.ts";
export { minutesSinceRun, troubleAfterRun } from "./after-run.ts";
