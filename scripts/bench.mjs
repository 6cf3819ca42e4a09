// `npm run bench`: time and memory, each beside a peer in the same run. `npm run bench -- fold` runs one of them;
// `npm run bench -- growth --full` hands the flag on to it.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { root, setUp } from "./set-up.mjs";

/** A million lines, folded, need more than the four gigabytes that Node takes by itself. */
const NODE = ["--import", "tsx", "--max-old-space-size=8192", "--expose-gc"];
const apart = ["calibrate.ts", "misfit.ts", "second-truth.ts"];
/** Those that measure what is built, and what of it. */
const built = {
  "delivery-in-browser.ts": ["web", "server"],
  "first-board.ts": ["web", "server"],
  "soundings-in-browser.ts": ["web", "server"],
  "open-devices.ts": ["server"],
  "whole-station.ts": ["server", "cli"],
};
const all = readdirSync(join(root, "bench")).filter((name) => name.endsWith(".ts") && !apart.includes(name));
const given = process.argv.slice(2);
const flags = given.filter((one) => one.startsWith("--"));
const wanted = given.filter((one) => !one.startsWith("--")).map((name) => `${name}.ts`);
const chosen = wanted.length > 0 ? wanted : all;
await setUp([...new Set(chosen.flatMap((name) => built[name] ?? []))]);
let failed = 0;
for (const name of chosen) {
  console.log(`\n== ${name}`);
  failed +=
    spawnSync(process.execPath, [...NODE, join(root, "bench", name), ...flags], { cwd: root, stdio: "inherit" })
      .status === 0
      ? 0
      : 1;
}
process.exit(failed > 0 ? 1 : 0);
