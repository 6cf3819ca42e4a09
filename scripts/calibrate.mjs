// `npm run calibrate`: do the soundings' intervals hold what they say, and are misfits noticed? Minutes, not seconds.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root, setUp } from "./set-up.mjs";

await setUp();
const tsx = join(root, "node_modules", ".bin", "tsx");
const failed = ["calibrate.ts", "misfit.ts"].filter(
  (name) => spawnSync(tsx, [join(root, "bench", name)], { cwd: root, stdio: "inherit" }).status !== 0,
);
process.exit(failed.length > 0 ? 1 : 0);
