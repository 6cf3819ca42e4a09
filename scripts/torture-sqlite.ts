import { spawn, type ChildProcessWithoutNullStreams } from "node:child_process";
import { once } from "node:events";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { createInterface } from "node:readline";
import Database from "better-sqlite3";
import { build } from "esbuild";
import type { Entry } from "#log";
import { openSqliteStore } from "#store/sqlite";
import type { Reply, Request } from "./torture-child.ts";
import type { BatchMark, LeftBehind, Running, Target } from "./torture-target.ts";

const PLACES = ["harbour", "island"] as const;

/** A bare SQLite store in a process of its own. */
export async function sqliteTarget(folder: string): Promise<Target> {
  const path = join(folder, "drykeel.db");
  const child = await bundleChild();
  return {
    name: "a process with a SQLite store",
    start: () => startChild(child, path),
    inspect: (look) => inspectFile(path, look),
    makeEntry,
    markOf: (entry) => entry.body as BatchMark,
  };
}

/** One file of plain JavaScript, so that two hundred starts take no longer than they must. */
async function bundleChild(): Promise<string> {
  const root = join(import.meta.dirname, "..");
  const outfile = join(root, ".cache", "torture", "child.mjs");
  await mkdir(join(root, ".cache", "torture"), { recursive: true });
  await build({
    entryPoints: [join(import.meta.dirname, "torture-child.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["better-sqlite3"],
    logLevel: "error",
  });
  return outfile;
}

function startChild(file: string, path: string): Running {
  const child = spawn(process.execPath, [file, path], { stdio: ["pipe", "pipe", "pipe"] });
  const gone = once(child, "exit");
  const waiting: Waiting = new Map();
  child.stdin.on("error", () => rejectAll(waiting));
  const ready = readReplies(child, waiting);
  // Killed while starting: nobody waits for it then.
  ready.catch(() => {});
  let number = 0;
  const ask = (request: Request) =>
    new Promise<void>((resolve, reject) => {
      waiting.set(request.number, { resolve, reject });
      child.stdin.write(`${JSON.stringify(request)}\n`);
    });
  return {
    ready,
    send: (entries) => ask({ number: ++number, entries }),
    sendPhoto: ({ hash, mime, bytes }) =>
      ask({ number: ++number, photo: { hash, mime, base64: Buffer.from(bytes).toString("base64") } }),
    kill: async () => {
      child.kill("SIGKILL");
      await gone;
    },
  };
}

type Waiting = Map<number, { resolve: () => void; reject: (error: Error) => void }>;

/** Resolves when the child is ready; goes on settling what waits until the child's last word, then rejects the rest. */
function readReplies(child: ChildProcessWithoutNullStreams, waiting: Waiting): Promise<void> {
  let complaint = "";
  child.stderr.on("data", (text: Buffer) => (complaint += text.toString()));
  return new Promise((resolve, reject) => {
    const lines = createInterface({ input: child.stdout });
    lines.on("line", (line) => {
      const reply = JSON.parse(line) as Reply;
      if ("ready" in reply) resolve();
      else settle(waiting, reply);
    });
    lines.on("close", () => {
      rejectAll(waiting);
      reject(new Error(`the process ended before it was ready: ${complaint}`));
    });
  });
}

function settle(waiting: Waiting, reply: { readonly number: number; readonly fault?: string }): void {
  const asked = waiting.get(reply.number);
  waiting.delete(reply.number);
  if (reply.fault === undefined) asked?.resolve();
  else asked?.reject(new Error(reply.fault));
}

function rejectAll(waiting: Waiting): void {
  for (const asked of waiting.values()) asked.reject(new Error("killed"));
  waiting.clear();
}

/** Opens a SQLite store that its process left behind. */
export async function inspectFile<T>(path: string, look: (left: LeftBehind) => Promise<T>): Promise<T> {
  const store = await openSqliteStore(path);
  try {
    const places = (await store.heads()).map((head) => head.place);
    return await look({
      since: (cursor, limit) => store.since(places, cursor, limit),
      photo: (hash) => store.photo(hash),
      integrity: async () => checkFile(path),
    });
  } finally {
    await store.close();
  }
}

function checkFile(path: string): string {
  const raw = new Database(path, { readonly: true });
  try {
    return String(raw.pragma("integrity_check", { simple: true }));
  } finally {
    raw.close();
  }
}

function makeEntry(number: number, mark: BatchMark, padding: string): Entry {
  return {
    id: `01940000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`,
    place: PLACES[number % 2] ?? PLACES[0],
    subject: `kit:${number % 12}`,
    kind: "step-answered",
    at: new Date(Date.UTC(2027, 0, 1) + number).toISOString(),
    by: "person-1",
    device: "device-1",
    body: { ...mark, padding },
  };
}
