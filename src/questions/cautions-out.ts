import { z } from "zod";

/** Ids of the cautions to show beside an answer, gravest first. */
export const cautionsOut = z.array(z.string()).describe("Ids of the cautions to show beside the answer, gravest first");
