export { CasualtyRuns } from "./casualty-runs.tsx";
export { LentPart } from "./lent-part.tsx";
export { CountPart, type Counting } from "./count-part.tsx";
export { countOf, allThere, type Said, type SaidOf } from "./counting.ts";
export { stoppedAt, type Stopped } from "./stopped.ts";
export { StoppedPart } from "./stopped-part.tsx";
export { isMet, stillToSay } from "./still-to-say.ts";
