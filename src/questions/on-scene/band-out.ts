import { z } from "zod";
import { answered } from "../quantity-field.ts";

/** A flow's band, as answers carry it. */
export const bandOut = z
  .strictObject({
    low: answered("flow", "Lower end"),
    high: answered("flow", "Upper end"),
    uncertainty: answered("flow", "One standard uncertainty"),
  })
  .describe("Where the true flow lies, 95 times in 100");
