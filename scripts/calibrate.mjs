// `npm run calibrate`: do the soundings' intervals cover what they say, and is a misfit noticed? Some minutes long.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root, setUp } from "./set-up.mjs";

await setUp();
const tsx = join(root, "node_modules", ".bin", "tsx");
const failed = ["calibrate.ts", "misfit.ts"].filter((name) => {
  console.log(`\n== ${name}`);
  return (
    spawnSync(tsx, [join(root, "bench", name), ...process.argv.slice(2)], { cwd: root, stdio: "inherit" }).status !== 0
  );
});
process.exit(failed.length > 0 ? 1 : 0);
