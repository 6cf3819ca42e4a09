// `npm run torture`: kill -9 under load, many times; see torture.ts. Arguments are handed on.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root, setUp } from "./set-up.mjs";

await setUp(process.argv.includes("--store") ? [] : ["server"]);
const tsx = join(root, "node_modules", ".bin", "tsx");
const script = join(root, "scripts", "torture.ts");
process.exit(spawnSync(tsx, [script, ...process.argv.slice(2)], { cwd: root, stdio: "inherit" }).status ?? 1);
