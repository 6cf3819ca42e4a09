import { z } from "zod";
import type { Said } from "./said.ts";
import * as schemaParts from "./schema-parts.ts";
import * as kitParts from "./kit-parts.ts";
import * as casualtyParts from "./casualty-parts.ts";
import * as stockParts from "./stock-parts.ts";
import * as peopleParts from "./people-parts.ts";
import * as workParts from "./work-parts.ts";
import * as visitParts from "./visit-parts.ts";
import * as drillParts from "./drill-parts.ts";

/**
 * What schemas are made of. The file of a kind is handed it and imports none of it: what folds lines in the browser then
 * loads no library of schemas.
 */
export const shapes = {
  z,
  ...schemaParts,
  ...kitParts,
  ...casualtyParts,
  ...stockParts,
  ...peopleParts,
  ...workParts,
  ...visitParts,
  ...drillParts,
};
export type Shapes = typeof shapes;

/** What an entry of a kind says, by the schema of its kind. */
export type BodyOf<MakeSchema extends (shapes: Shapes) => z.ZodType> = Said<ReturnType<MakeSchema>>;
