import type { StageId } from "./pattern.ts";

/** The stages of a turnaround, in the one order in which they come. */
export const STAGE_ORDER = [
  "open",
  "examine",
  "rig",
  "prime",
  "run",
  "spare-start",
  "dry",
  "hang",
  "restow",
  "seal",
] as const satisfies readonly [StageId, ...StageId[]];
