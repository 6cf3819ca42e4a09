// A sounding answered by the app's own question worker, bundled as it ships, in a thread of its own: the round trip and
// the processor time of it, by readings. `soundings-in-browser` does the same in a browser, which takes longer to start.
// Judged by processor time, which a busy machine stretches less than the clock; the least of a row is nearest to what an
// idle machine needs. The clock is printed too.
import { wrap, type Endpoint } from "comlink";
import { build } from "esbuild";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import type { AskDesk, AskOutcome } from "../src/web/worker/ask-worker.ts";
import { QUESTIONS } from "./in-browser/watched-soundings.ts";

const WANTED = 150;
const JUDGED = 8;
const COUNTS = [2, 4, 8, 16];
const RUNS = 12;
const WARM_UP = 4;

/** What a worker in a browser has and one here has not: messages come to the global object. */
const AS_IN_BROWSER = `
import { parentPort as port } from "node:worker_threads";
globalThis.postMessage = (...sent) => port.postMessage(...sent);
globalThis.addEventListener = (kind, act) => port.on(kind, (data) => (act.handleEvent ?? act).call(act, { data, origin: "" }));
globalThis.removeEventListener = () => undefined;
`;

/** The worker's file as the app's build makes it: one file, minified. */
async function shipped(folder: string): Promise<string> {
  const outfile = join(folder, "ask-worker.mjs");
  const entry = fileURLToPath(new URL("../src/web/worker/ask-worker.ts", import.meta.url));
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    platform: "browser",
    format: "esm",
    banner: { js: AS_IN_BROWSER },
    logLevel: "error",
  });
  return outfile;
}

interface Trip {
  readonly clock: number;
  readonly worked: number;
}

type Ask = (name: string, input: unknown) => Promise<AskOutcome>;

/** One question there and back [ms]; nothing else runs in this process meanwhile. */
async function trip(ask: Ask, name: string, input: object): Promise<Trip> {
  const before = process.cpuUsage();
  const began = performance.now();
  const outcome = await ask(name, input);
  const clock = performance.now() - began;
  const { user, system } = process.cpuUsage(before);
  if (outcome.kind === "refused") throw new Error(JSON.stringify(outcome.faults));
  return { clock, worked: (user + system) / 1000 };
}

function quantile(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))]!;
}

const ms = (value: number): string => `${value.toFixed(0).padStart(5)} ms`;

function tell(what: string, trips: readonly Trip[]): number {
  const worked = trips.map((one) => one.worked);
  const median = quantile(worked, 0.5);
  const clock = trips.map((one) => one.clock);
  console.log(
    `${what.padEnd(24)}processor: least${ms(Math.min(...worked))}, median${ms(median)}, 95 %${ms(quantile(worked, 0.95))}   clock: median${ms(quantile(clock, 0.5))}`,
  );
  return median;
}

/** Medians by question and readings; false where one that is judged is too long. */
async function benchWorker(ask: Ask): Promise<boolean> {
  let isMet = true;
  for (const [name, input] of QUESTIONS) {
    for (let k = 0; k < WARM_UP; k += 1) await trip(ask, name, input(k, JUDGED));
    for (const readings of COUNTS) {
      const trips: Trip[] = [];
      for (let k = 0; k < RUNS; k += 1) trips.push(await trip(ask, name, input(k, readings)));
      const median = tell(`${name}, ${readings} readings`, trips);
      if (readings <= JUDGED && median >= WANTED) isMet = false;
    }
  }
  return isMet;
}

/** A thread of this machine spoken to as a page speaks to its worker. */
function endpointOf(thread: Worker): Endpoint {
  return {
    postMessage: (sent: unknown) => thread.postMessage(sent, []),
    addEventListener: (_kind, act) =>
      thread.on("message", (data: unknown) => {
        const event = { data, origin: "" } as MessageEvent;
        if (typeof act === "function") act(event);
        else act.handleEvent(event);
      }),
    removeEventListener: () => undefined,
  };
}

const folder = mkdtempSync(join(tmpdir(), "bench-worker-"));
const worker = new Worker(await shipped(folder));
const desk = wrap<AskDesk>(endpointOf(worker));
console.log(`A sounding asked of the app's question worker, ${RUNS} casualties a row`);
const isMet = await benchWorker(async (name, input) => desk.ask(name, input));
await worker.terminate();
rmSync(folder, { recursive: true });
console.log(`\nwanted: under ${WANTED} ms of processor time up to ${JUDGED} readings: ${isMet ? "met" : "NOT met"}`);
process.exit(isMet ? 0 : 1);
