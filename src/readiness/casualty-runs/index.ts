export { casualtyRuns, withCasualtyRuns, type KitRun } from "./casualty-runs.ts";
