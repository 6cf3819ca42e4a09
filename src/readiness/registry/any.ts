/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "any". */
import * as struck from "../station/struck.kind.ts";

export interface AnyBodies {
  struck: struck.Body;
}
