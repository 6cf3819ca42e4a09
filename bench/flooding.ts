// Time of a one-hour flood beside scipy's LSODA in the same run, where python3 with scipy is there; of a soundings'
// posterior; and what compartments and readings cost. Medians; the machine's own load shows in both sides.
// Floods are timed as the `flood` question asks for them, in the bundle that ships, and each is judged.
import { build } from "esbuild";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type * as Flooding from "#flooding";
import { likelyPrior, readSoundings, simulateFlood, uprightSpace, type FloodCase, type SoundingCase } from "#flooding";
import { FLOODS, type Flood } from "./casualties/one-space.ts";

const WANTED_RATIO = 20;
const WANTED_POSTERIOR = 0.15;

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1]!;
}

/** Seconds of one call, the middle of many; the first calls warm up. */
function secondsOf(act: () => unknown, runs: number): number {
  for (let k = 0; k < Math.max(3, runs / 3); k += 1) act();
  const times = Array.from({ length: runs }, () => {
    const began = performance.now();
    act();
    return (performance.now() - began) / 1000;
  });
  return median(times);
}

interface Peer {
  readonly version: string;
  readonly cases: Readonly<Record<string, Measured>>;
}

interface Measured {
  readonly seconds: number;
  /** Without the event that is the answer, told when it will be [s]. */
  readonly told?: number;
  readonly answer: number;
}

function askPeer(): Peer | undefined {
  const script = fileURLToPath(new URL("./casualties/lsoda.py", import.meta.url));
  const asked = Object.fromEntries(FLOODS.map(({ name, family, inputs }) => [name, { family, inputs }]));
  const run = spawnSync("python3", [script], { encoding: "utf8", input: JSON.stringify(asked) });
  if (run.status !== 0) console.log(`no peer: ${run.stderr.trim().split("\n").at(-1) ?? "no python3"}`);
  return run.status === 0 ? (JSON.parse(run.stdout) as Peer) : undefined;
}

/** The room as it ships: one file by esbuild. */
async function shipped(): Promise<typeof Flooding> {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  const outfile = join(folder, "flooding.mjs");
  const entry = fileURLToPath(new URL("../src/flooding/index.ts", import.meta.url));
  await build({ entryPoints: [entry], outfile, bundle: true, platform: "node", format: "esm", logLevel: "error" });
  const room = (await import(pathToFileURL(outfile).href)) as typeof Flooding;
  rmSync(folder, { recursive: true });
  return room;
}

const micro = (seconds: number): string => `${(seconds * 1e6).toFixed(1).padStart(7)} µs`;

function besideTold(told: number | undefined, seconds: number): string {
  return told === undefined ? "" : `   (told the time: ${micro(told).trim()}, ${(told / seconds).toFixed(0)}x)`;
}

function benchFlood(flood: Flood, simulate: typeof simulateFlood, there: Measured | undefined): boolean {
  const run = simulate(flood.given);
  const many = Array.from({ length: 100 });
  const seconds = secondsOf(() => many.forEach(() => simulate(flood.given)), 60) / 100;
  const carried = `${run.counters.exact} of ${run.counters.phases}`;
  const start = `${flood.name.padEnd(30)}${micro(seconds)}   closed form ${carried}`;
  if (there === undefined) return console.log(start) === undefined;
  const ratio = there.seconds / seconds;
  const apart = Math.abs(flood.answerOf(run) / there.answer - 1).toExponential(0);
  console.log(
    `${start}   LSODA ${micro(there.seconds)}, ${apart} apart: ${ratio.toFixed(0)}x${besideTold(there.told, seconds)}`,
  );
  return ratio >= WANTED_RATIO;
}

async function benchFloods(): Promise<boolean> {
  const { simulateFlood: simulate } = await shipped();
  const peer = askPeer();
  console.log(
    `One-hour floods of one space, 1e-6${peer ? `, beside scipy ${peer.version} LSODA` : " (no scipy here)"}`,
  );
  for (let k = 0; k < 3000; k += 1) for (const { given } of FLOODS) simulate(given);
  return FLOODS.map((flood) => benchFlood(flood, simulate, peer?.cases[flood.name])).every(Boolean);
}

function soundings(count: number): SoundingCase {
  const readings = Array.from({ length: count }, (_, k) => ({
    at: 300 * k,
    level: 0.5 + 0.2 * (1 - Math.exp(-k / 4)),
  }));
  const space = uprightSpace({ area: 12, outside: 1.2, outsideDoubt: 0.04, sinkage: 0.02, lossLevel: 1.1 });
  return { space, readings, pumping: [{ from: 300, flow: 0.004 }], prior: likelyPrior(0.5) };
}

/** Medians in milliseconds: on the clock, and of processor time, which a busy machine does not stretch. */
function soundingTimes(given: SoundingCase): { readonly wall: number; readonly worked: number } {
  const worked: number[] = [];
  const wall = secondsOf(() => {
    const before = process.cpuUsage();
    readSoundings(given);
    worked.push(process.cpuUsage(before).user / 1000);
  }, 15);
  return { wall: wall * 1000, worked: median(worked) };
}

function benchSoundings(): boolean {
  console.log("\nSoundings: posterior of 8192 points a round, forecast, misfit and advice");
  let passes = true;
  for (const count of [2, 4, 8, 16]) {
    const given = soundings(count);
    const { wall, worked } = soundingTimes(given);
    console.log(
      `${`${count} readings`.padEnd(32)}${wall.toFixed(0).padStart(6)} ms   ${worked.toFixed(0)} ms of processor`,
    );
    if (count >= 8 && worked > WANTED_POSTERIOR * 1000) passes = false;
  }
  return passes;
}

function boatWith(count: number): FloodCase {
  const compartments = Array.from({ length: count }, (_, k) => ({
    name: `space ${k}`,
    from: (10 * k) / count,
    to: (10 * (k + 1)) / count,
    permeability: 0.9,
  }));
  return {
    vessel: {
      kind: "floating",
      hull: { form: "family", length: 10, beam: 3.2, depth: 1.8, draught: 0.8, blockCoefficient: 0.5 },
      compartments,
      kg: 0.9,
    },
    openings: compartments.map((one, k) => ({
      name: `hole ${k}`,
      into: one.name,
      ...(k === 0 ? {} : { from: compartments[k - 1]!.name }),
      opening: { kind: "hole", area: 0.001, height: 0.2 } as const,
    })),
    pumps: [{ name: "kit", compartment: "space 0", delivery: { kind: "steady", flow: 0.002 } }],
    duration: 3600,
    step: 600,
  };
}

function benchCompartments(): void {
  console.log("\nOne-hour floods of a rounded boat, trim and heel free, by compartments");
  for (const count of [1, 2, 4, 8]) {
    const given = boatWith(count);
    const seconds = secondsOf(() => simulateFlood(given), 5);
    const { looks } = simulateFlood(given).counters;
    console.log(`${`${count} compartments`.padEnd(32)}${(seconds * 1000).toFixed(0).padStart(6)} ms   ${looks} looks`);
  }
}

const isFast = [await benchFloods(), benchSoundings()];
benchCompartments();
console.log(
  `\nwanted: floods ${WANTED_RATIO}x, soundings under ${WANTED_POSTERIOR * 1000} ms: ${isFast.every(Boolean) ? "met" : "NOT met"}`,
);
process.exit(isFast.every(Boolean) ? 0 : 1);
