import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { LOST_EXIT_CODE } from "./start/opening-lines.ts";
import { readSettings, USAGE } from "./start/settings.ts";
import { startStation, type Running } from "./start.ts";
import { StartProblem } from "./start/start-problem.ts";

/** The start file: bundled to dist/server/main.js, two folders below the checkout, as this source is. */
const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** Requests under way may take this long [ms] once the data are lost; all of them end in a refusal. */
const LAST_WORDS_MS = 5000;

try {
  const args = process.argv.slice(2);
  if (args.includes("--help")) console.log(USAGE);
  else await serve(args);
} catch (cause) {
  if (!(cause instanceof StartProblem)) throw cause;
  console.error(cause.message);
  process.exitCode = 1;
}

async function serve(args: readonly string[]): Promise<void> {
  const running = await startStation(readSettings(process.env, args), root, (line) => console.error(line));
  for (const line of running.lines) console.log(line);
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => void running.stop());
  void running.lost.then((why) => endLost(running, why));
}

async function endLost(running: Running, why: string): Promise<void> {
  console.error(why);
  process.exitCode = LOST_EXIT_CODE;
  setTimeout(() => process.exit(), LAST_WORDS_MS).unref();
  await running.stop();
}
