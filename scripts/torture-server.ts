import { spawn, type ChildProcessWithoutNullStreams } from "node:child_process";
import { once } from "node:events";
import { cp, rm } from "node:fs/promises";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { uuidv7 } from "uuidv7";
import type { Entry } from "#log";
import type { PushReply, SetupRequest, SignedIn } from "#station";
import { inspectFile } from "./torture-sqlite.ts";
import type { BatchMark, Running, Target } from "./torture-target.ts";

const ROOT = join(import.meta.dirname, "..");
/** A copy of the built server, as deep in the checkout as the original: a build meanwhile does not disturb the run. */
const COPY = join(ROOT, ".cache", "torture-server");
const DEVICE = "torture-device";

/** Who sends: signed in once, before the first kill; the session must outlive all of them. */
interface Sender {
  readonly cookie: string;
  readonly person: string;
  readonly place: string;
}

/** The whole server as built, on a station of its own, spoken to over HTTP as devices do. */
export async function serverTarget(folder: string): Promise<Target> {
  await rm(COPY, { recursive: true, force: true });
  await cp(join(ROOT, "dist", "server"), COPY, { recursive: true });
  const sender = await foundStation(folder);
  return {
    name: "the server",
    start: () => startServer(folder, sender),
    inspect: (look) => inspectFile(join(folder, "drykeel.db"), look),
    makeEntry: (_, mark, padding) => makeEntry(sender, mark, padding),
    markOf: ({ kind, body }) => (kind === "mustered" ? readMark((body as { note: string }).note) : undefined),
  };
}

function makeEntry({ person, place }: Sender, mark: BatchMark, padding: string): Entry {
  return {
    id: uuidv7(),
    place,
    subject: `kit:${mark.batch % 12}`,
    kind: "mustered",
    at: new Date().toISOString(),
    by: person,
    device: DEVICE,
    body: { sealSeen: "00417", containerSound: true, note: `${mark.batch} ${mark.of} ${padding.slice(0, 900)}.` },
  };
}

function readMark(note: string): BatchMark {
  const [batch, of] = note.split(" ").map(Number);
  return { batch: batch ?? 0, of: of ?? 0 };
}

function startServer(folder: string, sender: Sender): Running {
  const { child, ready, gone } = spawnServer(folder);
  // Killed while starting: nobody waits for it then.
  ready.catch(() => {});
  const ask = async (path: string, init: RequestInit): Promise<Response> => {
    const { address } = await ready;
    const headers = { ...(init.headers as Record<string, string>), cookie: sender.cookie };
    return needOk(await fetch(`${address}${path}`, { ...init, headers }));
  };
  return {
    ready,
    send: async (entries) => judgeReply((await (await ask("/api/log/push", json({ entries }))).json()) as PushReply),
    sendPhoto: async ({ hash, mime, bytes }) => {
      const body = new Blob([bytes as Uint8Array<ArrayBuffer>]);
      await ask(`/api/photos/${hash}`, { method: "PUT", headers: { "content-type": mime }, body });
    },
    kill: async () => {
      child.kill("SIGKILL");
      await gone;
    },
  };
}

function judgeReply({ verdicts }: PushReply): void {
  const refused = verdicts.find((verdict) => verdict.verdict === "refused");
  if (refused !== undefined) throw new Error(`refused: ${JSON.stringify(refused)}`);
}

interface Spawned {
  readonly child: ChildProcessWithoutNullStreams;
  readonly gone: Promise<unknown>;
  readonly ready: Promise<{ readonly address: string; readonly code?: string }>;
}

function spawnServer(folder: string): Spawned {
  const env = { ...process.env, DATA_DIR: folder, PORT: "0", HOST: "127.0.0.1", DATABASE_URL: "" };
  const child = spawn(process.execPath, [join(COPY, "main.js"), "--empty"], { env, stdio: "pipe" });
  return { child, gone: once(child, "exit"), ready: readOpening(child) };
}

/** Waits for the lines that the terminal shows once the station answers. */
function readOpening(child: ChildProcessWithoutNullStreams): Promise<{ address: string; code?: string }> {
  let said = "";
  child.stderr.on("data", (text: Buffer) => (said += text.toString()));
  return new Promise((resolve, reject) => {
    const lines = createInterface({ input: child.stdout });
    lines.on("line", (line) => {
      said += `${line}\n`;
      const address = /Drykeel is at (\S+)/.exec(said)?.[1];
      const code = /with the code (\S+)/.exec(said)?.[1];
      if (address !== undefined && said.includes("Ctrl+C"))
        resolve({ address, ...(code === undefined ? {} : { code }) });
    });
    lines.on("close", () => reject(new Error(`the server ended before it was ready: ${said}`)));
  });
}

/** Sets the empty station up as its first administrator would, then kills the server for the first time. */
async function foundStation(folder: string): Promise<Sender> {
  const { child, ready, gone } = spawnServer(folder);
  const { address, code = "" } = await ready;
  const request: SetupRequest = {
    code,
    stationName: "Torture",
    name: "Keeper",
    pin: "730284",
    place: { name: "Harbour", strength: 1, zone: "Europe/Oslo" },
    device: DEVICE,
    deviceName: "Torture",
  };
  const reply = await needOk(await fetch(`${address}/api/setup`, json(request)));
  const cookie = reply.headers
    .getSetCookie()
    .map((one) => one.split(";")[0])
    .join("; ");
  const { person } = (await reply.json()) as SignedIn;
  child.kill("SIGKILL");
  await gone;
  return { cookie, person: person.id, place: await findPlace(folder) };
}

function findPlace(folder: string): Promise<string> {
  return inspectFile(join(folder, "drykeel.db"), async (left) => {
    const set = (await left.since({}, 100)).find((kept) => kept.entry.kind === "place-set");
    if (set === undefined) throw new Error("set-up did not outlive the first kill");
    return set.entry.subject.replace("place:", "");
  });
}

function json(body: unknown): RequestInit {
  return { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
}

async function needOk(reply: Response): Promise<Response> {
  if (!reply.ok) throw new Error(`${reply.status}: ${await reply.text()}`);
  return reply;
}
