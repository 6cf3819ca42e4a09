export { CasualtyRuns } from "./casualty-runs.tsx";
export { CountPart, type Counting } from "./count-part.tsx";
export { countOf, isCounted, allThere, type Said } from "./counting.ts";
export { stoppedAt, type Stopped } from "./stopped.ts";
export { StoppedPart } from "./stopped-part.tsx";
