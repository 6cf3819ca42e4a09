export { readSymptoms, type SymptomReading } from "./read-symptoms.ts";
export type { Cause, Sign } from "./signs.ts";
