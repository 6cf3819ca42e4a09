import { spawn, type ChildProcess } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import { PATIENCE_MS } from "./patience.ts";

const ROOT = join(import.meta.dirname, "..", "..", "..");

/** The demo with kits that go back eight months: enough for what is done with them today. */
export const SHORT_PAST = { DEMO_DAYS: "240" } as const;
/** The demo as `npm start` serves it: for what rests on a long record. */
export const TWO_YEARS = { DEMO_DAYS: "730" } as const;

/** A real server process on a port and a data folder of its own. */
export interface RunningStation {
  readonly url: string;
  readonly dataDir: string;
  /** Everything it printed so far. */
  output(): string;
  /** kill -9: no goodbye. */
  kill(): Promise<void>;
  /** Starts again on the same port and data. */
  restart(): Promise<void>;
  /** Ends it and removes its data. */
  close(): Promise<void>;
}

/**
 * Starts the built server as `npm start` does, with the demo station unless `args` say otherwise. The demo's data
 * folder is a copy of one that a server wrote for the whole run: writing it anew takes seconds for every file. Its kits
 * have a short past: a third of the log is a third of the work for every phone that signs in.
 *
 * @param settings - environment beside its own port and data folder, such as DATABASE_URL or TWO_YEARS
 * @param root - folder of the program, with what was built in `dist`; this checkout unless said
 */
export async function startStation(
  args: readonly string[] = [],
  settings: Readonly<Record<string, string>> = {},
  root = ROOT,
): Promise<RunningStation> {
  const port = await freePort();
  const dataDir = makeDataDir();
  const demo = { ...SHORT_PAST, ...settings };
  const written = writtenDemo(demo.DEMO_DAYS);
  if (args.length === 0 && settings["DATABASE_URL"] === undefined && written !== undefined)
    cpSync(written, dataDir, { recursive: true });
  const start = () => launch(root, args, { ...demo, PORT: String(port), DATA_DIR: dataDir });
  let running = await start();
  return {
    url: `http://localhost:${port}`,
    dataDir,
    output: () => running.output.join(""),
    kill: () => end(running.child, "SIGKILL"),
    restart: async () => {
      running = await start();
    },
    close: async () => {
      await end(running.child, "SIGKILL");
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}

/** The folder that was written for the whole run of tests; undefined in a bench, where the server writes its own. */
function writtenDemo(days: string): string | undefined {
  return process.env["VITEST"] === undefined ? undefined : inject("demoFolders")[days];
}

/**
 * Has a server write the demo station, and ends it as a service is ended.
 *
 * @param days - how many days its kits go back
 * @returns the data folder it left, with nobody using it
 */
export async function writeDemoFolder(days: string): Promise<string> {
  const dataDir = makeDataDir();
  const settings = { PORT: String(await freePort()), DATA_DIR: dataDir, DEMO_DAYS: days };
  const { child } = await launch(ROOT, [], settings);
  await end(child, "SIGTERM");
  return dataDir;
}

function makeDataDir(): string {
  return mkdtempSync(join(tmpdir(), "drykeel-journey-"));
}

interface Running {
  readonly child: ChildProcess;
  readonly output: string[];
}

async function launch(
  root: string,
  args: readonly string[],
  settings: Readonly<Record<string, string>>,
): Promise<Running> {
  const env = { ...process.env, ...settings };
  const child = spawn(process.execPath, [join(root, "dist", "server", "main.js"), ...args], { env, cwd: root });
  const output: string[] = [];
  child.stdout.on("data", (chunk: Buffer) => output.push(chunk.toString()));
  child.stderr.on("data", (chunk: Buffer) => output.push(chunk.toString()));
  await answering(`http://localhost:${settings["PORT"]}/api/health`, child, output);
  return { child, output };
}

async function answering(url: string, child: ChildProcess, output: readonly string[]): Promise<void> {
  const deadline = Date.now() + PATIENCE_MS;
  while (Date.now() < deadline) {
    if (child.exitCode !== null) throw new Error(`The server ended with ${child.exitCode}:\n${output.join("")}`);
    if (await answers(url)) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`No answer from ${url} within ${PATIENCE_MS / 1000} s:\n${output.join("")}`);
}

async function answers(url: string): Promise<boolean> {
  return fetch(url).then(
    (reply) => reply.ok,
    () => false,
  );
}

async function end(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill(signal);
  await ended;
}

async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once("error", reject);
    probe.listen(0, () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === "object" && address ? resolve(address.port) : reject(new Error("no port")),
      );
    });
  });
}
