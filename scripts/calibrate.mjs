// `npm run calibrate`: do the soundings' intervals cover what they say, is a misfit noticed, and does the sheet hold
// against a second truth? An hour or so. `npm run calibrate -- second-truth --quick` runs one of them, with its options.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root, setUp } from "./set-up.mjs";

const parts = ["calibrate", "misfit", "second-truth"];
const [first, ...rest] = process.argv.slice(2);
if (first !== undefined && !parts.includes(first)) {
  console.error(`There is no ${first}: give one of ${parts.join(", ")}, or nothing for all.`);
  process.exit(2);
}
await setUp();
const tsx = join(root, "node_modules", ".bin", "tsx");
const failed = (first === undefined ? parts : [first]).filter((name) => {
  console.log(`\n== ${name}`);
  return spawnSync(tsx, [join(root, "bench", `${name}.ts`), ...rest], { cwd: root, stdio: "inherit" }).status !== 0;
});
process.exit(failed.length > 0 ? 1 : 0);
