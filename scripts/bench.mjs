// `npm run bench`: time and memory, each beside a peer in the same run. `npm run bench -- fold` runs one of them.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { root, setUp } from "./set-up.mjs";

const apart = ["calibrate.ts", "misfit.ts", "second-truth.ts"];
const inBrowser = ["soundings-in-browser.ts"];
const all = readdirSync(join(root, "bench")).filter((name) => name.endsWith(".ts") && !apart.includes(name));
const wanted = process.argv.slice(2).map((name) => `${name}.ts`);
const chosen = wanted.length > 0 ? wanted : all;
await setUp(chosen.some((name) => inBrowser.includes(name)) ? ["web", "server"] : []);
let failed = 0;
for (const name of chosen) {
  console.log(`\n== ${name}`);
  failed +=
    spawnSync(join(root, "node_modules", ".bin", "tsx"), [join(root, "bench", name)], { cwd: root, stdio: "inherit" })
      .status === 0
      ? 0
      : 1;
}
process.exit(failed > 0 ? 1 : 0);
