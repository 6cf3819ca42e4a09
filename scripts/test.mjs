// Everything that must hold, in one command: types, lint, format, unused code, build, rooms, contracts, journeys.
// Sets itself up on a fresh clone. Ends with "N passed, N failed" and exit code 1 if anything failed.
// `--quick` leaves out the build and the journeys in the browser: the loop while working (`npm run check`).
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { setUp } from "./set-up.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const results = join(root, ".cache", "results");
const quick = process.argv.includes("--quick");

const checks = [
  ["types", ["tsc", "--noEmit"]],
  ["lint", ["oxlint", "."]],
  ["format", ["prettier", "--check", "--log-level", "warn", "."]],
  ["unused code", ["knip", "--no-progress"]],
];
const subjectsOfCommits = [process.execPath, [join(root, "scripts", "commit-subjects.mjs")]];
const suites = [["rooms, contracts and architecture", "vitest.config.ts"]];
if (!quick) suites.push(["journeys in the browser", "vitest.journeys.config.ts"]);

await setUp();
const tally = { passed: 0, failed: 0, skipped: 0 };
for (const [name, command] of checks) count(name, runTool(command) === 0);
count("subjects of commits", spawnSync(...subjectsOfCommits, { cwd: root, stdio: "inherit" }).status === 0);
if (!quick)
  count(
    "build",
    spawnSync(process.execPath, [join(root, "scripts", "build.mjs")], { cwd: root, stdio: "inherit" }).status === 0,
  );
for (const [name, config] of suites) runSuite(name, config);
const skipped = tally.skipped > 0 ? `, ${tally.skipped} skipped` : "";
console.log(`\n${tally.passed} passed, ${tally.failed} failed${skipped}`);
process.exit(tally.failed > 0 ? 1 : 0);

function runTool([tool, ...args]) {
  return spawnSync(join(root, "node_modules", ".bin", tool), args, { cwd: root, stdio: "inherit" }).status;
}

function count(name, passed) {
  console.log(`${passed ? "passed" : "FAILED"}: ${name}`);
  tally[passed ? "passed" : "failed"] += 1;
}

/** Runs one vitest configuration and adds its counts; a suite that dies without a report is one failure. */
function runSuite(name, config) {
  mkdirSync(results, { recursive: true });
  const report = join(results, `${config}.json`);
  rmSync(report, { force: true });
  const args = ["run", "--config", config, "--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const exit = runTool(["vitest", ...args]);
  const counted = readReport(report);
  tally.passed += counted.numPassedTests;
  tally.failed += counted.numFailedTests;
  tally.skipped += counted.numPendingTests + counted.numTodoTests;
  if (exit !== 0 && counted.numFailedTests === 0) count(`${name} (ended with exit code ${exit})`, false);
}

function readReport(path) {
  const nothing = { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 };
  try {
    return { ...nothing, ...JSON.parse(readFileSync(path, "utf8")) };
  } catch (cause) {
    console.log(`no report at ${path}: ${cause.message}`);
    return nothing;
  }
}
