/**
 * 200 open devices at a station of 200,000 lines, each with an event stream, pulling when it is told; one push a second
 * for a minute, each from another device. How long a push takes, how long until a line is on each device, the server's
 * memory and its processor time for one push with all the pulls that follow, which other work on the machine does not
 * change much; beside it a bare server with the same streams, which judges nothing and knows nobody.
 * Run with `npm run bench -- open-devices`; LINES, DEVICES and SECONDS are taken from the environment, and FOLDER=path
 * keeps the made-up station for the next time.
 */
import { spawn, type ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { uuidv7 } from "uuidv7";
import { fillFolder } from "./growth/filled-folder.ts";
import { busyOf, endProcess, memoryOf, startServer, untilAnswers } from "./growth/measured-process.ts";
import { OpenDevice, type Asked } from "./growth/open-device.ts";
import { signInDevices, type SignedInDevice } from "./growth/signed-in-devices.ts";

const LINES = Number(process.env["LINES"] ?? 200_000);
const DEVICES = Number(process.env["DEVICES"] ?? 200);
const SECONDS = Number(process.env["SECONDS"] ?? 60);
/** Half a core at one push a second: what is more would leave little for anything else [ms of processor time a push]. */
const LIMIT_MS = 500;
const PORT = Number(process.env["PORT"] ?? 4878);
/** How long the last line may take to be everywhere [ms]. */
const PATIENCE_MS = 20_000;

interface Measured {
  readonly pushes: readonly number[];
  readonly seen: readonly number[];
  readonly expected: number;
  readonly memory: ReturnType<typeof memoryOf>;
  /** Processor time of the server for each push [ms]. */
  readonly busy: number | undefined;
}

interface Side {
  readonly child: ChildProcess;
  asked(device: SignedInDevice): Asked;
}

async function post<Reply>(url: string, cookie: string, payload: object): Promise<Reply> {
  const headers = { "content-type": "application/json", cookie };
  const reply = await fetch(url, { method: "POST", headers, body: JSON.stringify(payload) });
  const text = await reply.text();
  if (!reply.ok) throw new Error(`${url}: ${reply.status} ${text}`);
  return JSON.parse(text) as Reply;
}

interface KeptLine {
  readonly entry: { readonly id: string; readonly place: string };
  readonly seq: number;
  readonly hash: string;
}

/** A device of the station: it stands where the first event says, so that it begins with the whole log. */
function askStation({ cookie }: SignedInDevice, address: string): Asked {
  let held: Record<string, { readonly seq: number; readonly hash: string }> | undefined;
  return {
    live: `${address}/api/log/live`,
    headers: { cookie },
    onEvent: (event, data) => {
      if (event !== "chains") return false;
      const isFirst = held === undefined;
      held ??= (data as { readonly heads: NonNullable<typeof held> }).heads;
      return !isFirst;
    },
    pull: async () => {
      const page = await post<{ readonly entries: readonly KeptLine[]; readonly more: boolean }>(
        `${address}/api/log/pull`,
        cookie,
        { held: held ?? {} },
      );
      for (const { entry, seq, hash } of page.entries) held = { ...held, [entry.place]: { seq, hash } };
      return { ids: page.entries.map(({ entry }) => entry.id), more: page.more };
    },
  };
}

function askPeer(address: string): Asked {
  let held = -1;
  return {
    live: `${address}/api/log/live`,
    headers: {},
    onEvent: (_event, data) => {
      const isFirst = held < 0;
      if (isFirst) held = data as number;
      return !isFirst;
    },
    pull: async () => {
      const { entries } = await post<{ readonly entries: readonly { readonly id: string }[] }>(
        `${address}/api/log/pull`,
        "",
        { held },
      );
      held += entries.length;
      return { ids: entries.map(({ id }) => id), more: false };
    },
  };
}

async function startStation(folder: string): Promise<Side> {
  const { child } = await startServer(folder, PORT);
  return { child, asked: (device) => askStation(device, `http://127.0.0.1:${PORT}`) };
}

async function startPeer(folder: string): Promise<Side> {
  const env = { ...process.env, PORT: String(PORT), FILE: join(folder, "peer.ndjson") };
  const main = join(import.meta.dirname, "growth", "stream-peer.mjs");
  const child = spawn(process.execPath, [main], { env, stdio: ["ignore", "ignore", "inherit"] });
  await untilAnswers(child, `http://127.0.0.1:${PORT}/`);
  return { child, asked: () => askPeer(`http://127.0.0.1:${PORT}`) };
}

function lineOf({ person, device }: SignedInDevice) {
  const about = { place: "boathouse", subject: "kit:br-01", kind: "mustered", at: new Date().toISOString() };
  return { id: uuidv7(), ...about, by: person, device, body: { sealSeen: "as it is", containerSound: true } };
}

/** One push from a device. @returns how long it took [ms] */
async function push(device: SignedInDevice, line: { readonly id: string }): Promise<number> {
  const from = performance.now();
  const reply = await post<{ readonly verdicts?: readonly { readonly verdict: string }[] }>(
    `http://127.0.0.1:${PORT}/api/log/push`,
    device.cookie,
    { entries: [line] },
  );
  const refused = reply.verdicts?.find(({ verdict }) => verdict !== "accepted");
  if (refused) throw new Error(JSON.stringify(refused));
  return performance.now() - from;
}

async function measure(side: Side, devices: readonly SignedInDevice[]): Promise<Measured> {
  const sent = new Map<string, number>();
  const seen: number[] = [];
  const note = (id: string) => sent.has(id) && seen.push(performance.now() - sent.get(id)!);
  const open = await Promise.all(devices.map((device) => OpenDevice.open(side.asked(device), note)));
  const pushes: number[] = [];
  const [begin, before] = [performance.now(), busyOf(side.child.pid)];
  for (let second = 0; second < SECONDS; second++) {
    await new Promise((resolve) => setTimeout(resolve, begin + second * 1000 - performance.now()));
    const line = lineOf(devices[(second * 7) % devices.length]!);
    sent.set(line.id, performance.now());
    pushes.push(await push(devices[(second * 7) % devices.length]!, line));
  }
  const expected = SECONDS * devices.length;
  const until = performance.now() + PATIENCE_MS;
  while (seen.length < expected && performance.now() < until) await new Promise((next) => setTimeout(next, 50));
  const after = busyOf(side.child.pid);
  const busy = before === undefined || after === undefined ? undefined : ((after - before) * 1000) / SECONDS;
  const memory = memoryOf(side.child.pid);
  open.forEach((device) => device.close());
  return { pushes, seen, expected, memory, busy };
}

function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

function middleAndWorst(values: readonly number[]): string {
  return `${quantile(values, 0.5).toFixed(0)} ms, p99 ${quantile(values, 0.99).toFixed(0)} ms`;
}

function report(name: string, { pushes, seen, expected, memory, busy }: Measured): void {
  const held = memory === undefined ? "not told" : `${memory.now.toFixed(0)} MB, at most ${memory.peak.toFixed(0)} MB`;
  console.log(`${name}: push ${middleAndWorst(pushes)}; push to seen ${middleAndWorst(seen)}; memory ${held}`);
  const cost = busy === undefined ? "not told" : `${busy.toFixed(0)} ms a push`;
  console.log(`  ${pushes.length} pushes, seen ${seen.length} of ${expected} times; processor time ${cost}`);
}

/** Measures one server and ends it, whatever happened. */
async function measured(side: Side, devices: readonly SignedInDevice[]): Promise<Measured> {
  try {
    return await measure(side, devices);
  } finally {
    await endProcess(side.child);
  }
}

const folder = process.env["FOLDER"] ?? mkdtempSync(join(tmpdir(), "drykeel-open-devices-"));
try {
  await fillFolder(folder, LINES);
  const devices = await signInDevices(folder, DEVICES);
  console.log(`${DEVICES} open devices, ${LINES} lines, a push a second for ${SECONDS} s; median and p99`);
  const peer = await measured(await startPeer(folder), devices);
  report("bare server", peer);
  const station = await measured(await startStation(folder), devices);
  report("station    ", station);
  const isOver = station.seen.length < station.expected || (station.busy ?? 0) > LIMIT_MS;
  console.log(`limit: seen everywhere, ${LIMIT_MS} ms of processor time a push: ${isOver ? "not held" : "held"}`);
  if (isOver) process.exitCode = 1;
} finally {
  if (process.env["FOLDER"] === undefined) rmSync(folder, { recursive: true, force: true });
}
