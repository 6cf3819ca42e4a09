// Builds the parts named, or all: web with Vite; server and command line each into one file with esbuild.
import { spawnSync } from "child_process";
import { mkdirSync, readFileSync } from "fs";
import { join } from "path";
import { markBuilt, root, setUp } from "./set-up.mjs";

await setUp();
const wanted = process.argv.slice(2);
const parts = wanted.length > 0 ? wanted : ["web", "server", "cli"];
for (const part of parts) {
  if (part === "web") buildWeb();
  else await bundle(part);
  mkdirSync(join(root, "dist", part), { recursive: true });
  markBuilt(part);
}

function buildWeb() {
  const vite = join(root, "node_modules", "vite", "bin", "vite.js");
  const run = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], { cwd: root, stdio: "inherit" });
  if (run.status !== 0) process.exit(1);
}

/** Dependencies stay outside, each named: leaving out all packages would leave our own `#room` imports in too. */
async function bundle(part) {
  const { build } = await import("esbuild");
  const packages = Object.keys(JSON.parse(readFileSync(join(root, "package.json"), "utf8")).dependencies);
  await build({
    entryPoints: [join(root, "src", part, "main.ts")],
    outfile: join(root, "dist", part, "main.js"),
    bundle: true,
    platform: "node",
    target: "node20",
    format: "esm",
    sourcemap: true,
    logLevel: "warning",
    external: packages.flatMap((name) => [name, `${name}/*`]),
  });
}
