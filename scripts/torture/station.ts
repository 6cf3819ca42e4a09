import { spawn } from "node:child_process";
import { once } from "node:events";
import { chownSync, chmodSync, cpSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Start } from "./hardship.ts";

const ROOT = join(import.meta.dirname, "..", "..");
const COPY = join(ROOT, ".cache", "torture-server");
/** Nobody: rights on files bind it, as they do not bind the root of a container. */
const NOBODY = 65_534;
/** What never answers is given up; a machine with much else to do may take minutes over a start [ms]. */
const START_MS = 300_000;

/** A server of the station, in a process of its own. */
export interface Station {
  /** Undefined where it ended before it answered. */
  readonly address: string | undefined;
  readonly code: string | undefined;
  said(): string;
  /** @returns its exit code; null where a signal ended it */
  end(signal: "SIGKILL" | "SIGTERM"): Promise<number | null>;
}

/** A copy of the built server, as deep in the checkout as the original: a build meanwhile does not disturb the run. */
export function copyServer(): void {
  rmSync(COPY, { recursive: true, force: true });
  cpSync(join(ROOT, "dist", "server"), COPY, { recursive: true });
}

/** Where a station keeps its data: in the folder alone, or in the database at an address. */
export interface Where {
  readonly folder: string;
  readonly databaseUrl?: string;
}

/** Starts a server on the data and waits until it answers or ends. */
export async function startStation({ folder, databaseUrl = "" }: Where, start: Start): Promise<Station> {
  const { clockOffset, jumpAfter = 0, quota } = start;
  ownAll(folder);
  const preload = join(ROOT, "scripts", "torture", "clock-preload.mjs");
  const limit = quota === undefined ? "" : `trap '' XFSZ; ulimit -f ${quota}; `;
  const run = `${limit}exec "$0" --import "$1" "$2" --empty`;
  const env = { ...process.env, DATA_DIR: folder, PORT: "0", HOST: "127.0.0.1", DATABASE_URL: databaseUrl };
  const clock = { CLOCK_OFFSET_MS: String(clockOffset), CLOCK_JUMP_AFTER_MS: String(jumpAfter) };
  const child = spawn("sh", ["-c", run, process.execPath, preload, join(COPY, "main.js")], {
    env: { ...env, ...clock },
    stdio: "pipe",
    ...(process.getuid?.() === 0 ? { uid: NOBODY, gid: NOBODY } : {}),
  });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (text: Buffer) => (said += text.toString()));
  const gone = once(child, "exit").then(([code]) => code as number | null);
  await Promise.race([until(() => said.includes("Ctrl+C")), gone, pause(START_MS)]);
  return {
    address: /Drykeel is at (\S+)/.exec(said)?.[1],
    code: /with the code (\S+)/.exec(said)?.[1],
    said: () => said,
    end: (signal) => {
      child.kill(signal);
      return gone;
    },
  };
}

/** The folder and what is in it belong to whoever the server runs as. */
function ownAll(folder: string): void {
  if (process.getuid?.() !== 0) return;
  chownSync(folder, NOBODY, NOBODY);
  for (const name of readdirSync(folder, { recursive: true })) chownSync(join(folder, String(name)), NOBODY, NOBODY);
}

/** Lets nobody write in the folder, or its owner again. */
export function setWritable(folder: string, isWritable: boolean): void {
  for (const name of readdirSync(folder, { withFileTypes: true })) {
    if (name.isFile()) chmodSync(join(folder, name.name), isWritable ? 0o600 : 0o400);
  }
  chmodSync(folder, isWritable ? 0o700 : 0o500);
}

async function until(holds: () => boolean): Promise<void> {
  for (const began = performance.now(); !holds() && performance.now() - began < START_MS;) await pause(20);
}

export function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
