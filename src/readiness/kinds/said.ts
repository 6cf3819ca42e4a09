import type { z } from "zod";

/** What a schema lets through, as it stands in the log: nobody writes to it. */
export type Said<Schema extends z.ZodType> = NeverWritten<z.output<Schema>>;

type NeverWritten<Part> = Part extends readonly (infer One)[]
  ? readonly NeverWritten<One>[]
  : Part extends object
    ? { readonly [Key in keyof Part]: NeverWritten<Part[Key]> }
    : Part;
