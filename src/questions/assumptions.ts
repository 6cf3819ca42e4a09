import { z } from "zod";

/** Something taken for granted because it was not given, and how much that matters. */
export interface Assumption {
  readonly what: string;
  readonly effect: string;
}

/** Assumptions as an answer carries them; empty where nothing was assumed. */
export const assumptionsOut = z
  .array(z.strictObject({ what: z.string(), effect: z.string() }))
  .describe("What was taken for granted because it was not given, and how much that matters");
