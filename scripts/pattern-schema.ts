/** Writes patterns/pattern.schema.json from the loader's own schema: `npx tsx scripts/pattern-schema.ts`. */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { format, resolveConfig } from "prettier";
import { patternJsonSchema } from "#kit";

const target = fileURLToPath(new URL("../patterns/pattern.schema.json", import.meta.url));
const settings = await resolveConfig(target);
writeFileSync(target, await format(JSON.stringify(patternJsonSchema()), { ...settings, filepath: target }));
console.log(`Wrote ${target}`);
