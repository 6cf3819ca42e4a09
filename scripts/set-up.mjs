// Makes a checkout able to run: the right Node, dependencies as locked, parts built from these sources.
// Plain old syntax and bare module names, so that a Node too old for the rest can still read this and say so.
import { spawn, spawnSync } from "child_process";
import { createHash } from "crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "fs";
import { dirname, join, relative, sep } from "path";
import { fileURLToPath } from "url";

export const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const installLog = join(root, ".cache", "install.log");

/** Parts of the build and the rooms whose change does not matter to each. */
const PARTS = {
  web: ["src/server/", "src/cli/", "src/store/sqlite/", "src/store/postgres/", "src/store/sql/"],
  server: ["src/web/", "src/cli/", "src/store/browser/"],
  cli: ["src/web/", "src/server/", "src/store/browser/"],
};
const SOURCES = ["src", "patterns", "package-lock.json", "tsconfig.json", "vite.config.ts", "scripts/build.mjs"];

/** Checks Node, installs what is locked where it is missing or another version, and builds the parts named. */
export async function setUp(parts = []) {
  requireNode();
  if (!isInstalled()) await install();
  const stale = parts.filter((part) => builtHash(part) !== sourceHash(part));
  if (stale.length > 0) build(stale);
}

function requireNode() {
  const wanted = readJson("package.json").engines.node.replace(">=", "");
  if (isAtLeast(process.versions.node, wanted)) return;
  stop(`Node ${wanted} or later is needed and this is ${process.versions.node}. Install it from https://nodejs.org`);
}

function isAtLeast(version, wanted) {
  const have = version.split(".").map(Number);
  const want = wanted.split(".").map(Number);
  const differs = want.findIndex((number, i) => have[i] !== number);
  return differs === -1 || have[differs] > want[differs];
}

/** True where every package that the lock file demands is in node_modules in that version. */
function isInstalled() {
  const kept = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(kept)) return false;
  const have = JSON.parse(readFileSync(kept, "utf8")).packages;
  const want = Object.entries(readJson("package-lock.json").packages);
  const isKept = (path, version) => have[path] !== undefined && have[path].version === version;
  return want.every(([path, { version, optional }]) => path === "" || optional || isKept(path, version));
}

async function install() {
  say("Installing what Drykeel needs. This takes a minute or two, once; several on a small machine.");
  const started = Date.now();
  const beat = setInterval(
    () => say(`Still installing, ${Math.round((Date.now() - started) / 1000)} s so far.`),
    30000,
  );
  const { status, output } = await runInstall();
  clearInterval(beat);
  if (status === 0) return;
  mkdirSync(dirname(installLog), { recursive: true });
  writeFileSync(installLog, output);
  stop(`${explainInstall(output)} The whole output is in ${relative(root, installLog)}.`);
}

/** Runs `npm ci`; resolves to its exit status and what it said on its error stream. */
function runInstall() {
  const isWindows = process.platform === "win32";
  const options = { cwd: root, shell: isWindows, stdio: ["ignore", "ignore", "pipe"] };
  return new Promise((done) => {
    let output = "";
    const npm = spawn(isWindows ? "npm.cmd" : "npm", ["ci"], options);
    npm.stderr.setEncoding("utf8").on("data", (text) => (output += text));
    npm.on("error", (cause) => done({ status: null, output: String(cause) }));
    npm.on("close", (status) => done({ status, output }));
  });
}

function explainInstall(output) {
  if (/ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT/.test(output) && !/gyp ERR/.test(output))
    return "The package registry cannot be reached. Connect to the internet and start again.";
  const missing = ["python3", "make", "g++"].filter((tool) => spawnSync(tool, ["--version"]).error);
  if (/better-sqlite3|gyp ERR/.test(output) && missing.length > 0) return explainCompiler(missing);
  if (/EACCES|EPERM|EROFS/.test(output))
    return `The folder ${root} cannot be written to. Move the checkout or its rights.`;
  return "npm ci failed.";
}

function explainCompiler(missing) {
  const how = {
    darwin: "xcode-select --install",
    win32: "winget install Microsoft.VisualStudio.2022.BuildTools",
    linux: "sudo apt install python3 make g++ (or your system's own names)",
  };
  return `No ready-made SQLite for this computer, and no compiler to make one: ${missing.join(", ")} missing. Run: ${how[process.platform] || how.linux}. Then start again.`;
}

function build(parts) {
  say(`Building ${parts.join(", ")}.`);
  const run = spawnSync(process.execPath, [join(root, "scripts", "build.mjs"), ...parts], { stdio: ["ignore", 2, 2] });
  if (run.status !== 0) stop("The build failed; see above.");
}

/** Hash of the sources that a part was last built from. */
function builtHash(part) {
  const marker = markerOf(part);
  return existsSync(marker) ? readFileSync(marker, "utf8") : "";
}

/** Remembers what a part was built from. */
export function markBuilt(part) {
  writeFileSync(markerOf(part), sourceHash(part));
}

function markerOf(part) {
  return join(root, "dist", part, ".built-from");
}

function sourceHash(part) {
  const hash = createHash("sha256");
  for (const file of SOURCES.flatMap(filesUnder).filter((file) => matters(file, part)))
    hash
      .update(file)
      .update("\0")
      .update(readFileSync(join(root, file)))
      .update("\0");
  return hash.digest("hex");
}

function matters(file, part) {
  const isTest = /\.test\.tsx?$|\.tsbuildinfo$/.test(file);
  return !isTest && !PARTS[part].some((folder) => file.startsWith(folder));
}

/** Paths of the files at or under a path, with forward slashes, in a fixed order. */
function filesUnder(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path.split(sep).join("/")];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

function readJson(name) {
  return JSON.parse(readFileSync(join(root, name), "utf8"));
}

/** Progress goes to stderr, so that a command's own output stays clean. */
function say(line) {
  process.stderr.write(`${line}\n`);
}

function stop(line) {
  say(line);
  process.exit(1);
}
