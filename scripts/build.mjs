// Builds the parts named, or all: web with Vite; server and command line each from its start files with esbuild.
import { spawnSync } from "child_process";
import { mkdirSync, readFileSync } from "fs";
import { join } from "path";
import { markBuilt, root, setUp } from "./set-up.mjs";

/** Pure modules of many files, which load faster from our own file. All must be in it that share one of them. */
const INLINED = ["kysely", "zod", "fastify-type-provider-zod"];
/** What is started by itself: a process, or a thread of one. */
const ENTRIES = { server: ["main.ts", "questions/question-worker.ts"], cli: ["main.ts"] };
/** Older modules among them ask for `require`, which a module file has not. */
const REQUIRE = 'import { createRequire as makeRequire } from "module"; const require = makeRequire(import.meta.url);';

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

/** Other dependencies stay outside, each named: leaving out all packages would leave our own `#room` imports in too. */
async function bundle(part) {
  const { build } = await import("esbuild");
  const packages = Object.keys(JSON.parse(readFileSync(join(root, "package.json"), "utf8")).dependencies);
  const outside = packages.filter((name) => !INLINED.includes(name));
  const outdir = join(root, "dist", part);
  await build({
    entryPoints: ENTRIES[part].map((name) => join(root, "src", part, name)),
    outdir,
    entryNames: "[name]",
    bundle: true,
    // What is imported only when it is needed gets a file of its own, named by its content: a server that runs while
    // the next is built still finds its own.
    splitting: true,
    platform: "node",
    target: "node20",
    format: "esm",
    banner: { js: REQUIRE },
    sourcemap: true,
    logLevel: "warning",
    external: outside.flatMap((name) => [name, `${name}/*`]),
  });
}
