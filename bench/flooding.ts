// Time of a one-hour flood beside scipy's LSODA in the same run, where python3 with scipy is there; of a soundings'
// posterior; and what compartments and readings cost. Medians; the machine's own load shows in both sides.
// Floods are timed twice: by the closed form, which is exact for one upright space at a held level, and by the general
// simulation, which also watches for events. The wanted ratio is judged on the closed form, as it is what answers there.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import {
  levelAfter,
  likelyPrior,
  readSoundings,
  simulateFlood,
  strengthOf,
  uprightSpace,
  type FloodCase,
  type SoundingCase,
} from "#flooding";

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

function held(start: number, pumped: number): FloodCase {
  return {
    vessel: { kind: "fixed", outsideLevel: 1.6, compartments: [{ name: "hold", area: 20, level: start }] },
    openings: [{ name: "hole", into: "hold", opening: { kind: "hole", area: (Math.PI / 4) * 0.15 ** 2, height: 0 } }],
    pumps: pumped > 0 ? [{ name: "pump", compartment: "hold", delivery: { kind: "steady", flow: pumped } }] : [],
    duration: 3600,
    step: 1800,
    accuracy: { relative: 1e-6, absolute: 1e-8 },
  };
}

const CASES: Readonly<Record<string, FloodCase>> = {
  fills: held(0, 0),
  "rises to rest against a pump": held(0, 0.03),
  "falls to rest": held(1.55, 0.03),
};

interface Peer {
  readonly version: string;
  readonly cases: Readonly<
    Record<string, { readonly seconds: number; readonly level: number; readonly rates: number }>
  >;
}

function askPeer(): Peer | undefined {
  const script = fileURLToPath(new URL("./casualties/lsoda.py", import.meta.url));
  const run = spawnSync("python3", [script], { encoding: "utf8" });
  return run.status === 0 ? (JSON.parse(run.stdout) as Peer) : undefined;
}

function micro(seconds: number): string {
  return `${(seconds * 1e6).toFixed(1).padStart(9)} µs`;
}

function beside(seconds: number, there: Peer["cases"][string] | undefined): string {
  return there ? `   ${(there.seconds / seconds).toFixed(1)}x as fast as LSODA` : "";
}

/** Levels after half an hour and an hour. */
function exactly(given: FloodCase): number[] {
  const { area, level } = given.vessel.compartments[0] as { area: number; level: number };
  const pump = given.pumps[0]?.delivery;
  const pumped = pump?.kind === "steady" ? pump.flow : 0;
  const space = { area, strength: strengthOf(given.openings[0]!.opening), hole: 0, outside: 1.6, pumped };
  return [1800, 3600].map((seconds) => levelAfter(space, level, seconds));
}

function benchFloods(): boolean {
  const peer = askPeer();
  console.log(
    `One-hour floods, one compartment, 1e-6${peer ? ` beside scipy ${peer.version} LSODA` : " (no scipy here)"}`,
  );
  let passes = true;
  for (const [name, given] of Object.entries(CASES)) {
    const exact = (): number[] => exactly(given);
    const seconds = secondsOf(() => Array.from({ length: 100 }, exact), 60) / 100;
    const general = secondsOf(() => simulateFlood(given), 300);
    const apart = Math.abs(simulateFlood(given).series[1]!.levels.hold! / exact()[0]! - 1);
    const there = peer?.cases[name];
    console.log(`${name}\n  closed form ${micro(seconds)}${beside(seconds, there)}`);
    console.log(
      `  simulation  ${micro(general)}${beside(general, there)}   ${apart.toExponential(1)} from the closed form`,
    );
    if (there)
      console.log(
        `  LSODA       ${micro(there.seconds)}   ${Math.abs(there.level / exact()[0]! - 1).toExponential(1)} from it`,
      );
    if (there && there.seconds / seconds < WANTED_RATIO) passes = false;
  }
  return passes;
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
    if (count === 8 && worked > WANTED_POSTERIOR * 1000) passes = false;
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
    const { rates } = simulateFlood(given).counters;
    console.log(`${`${count} compartments`.padEnd(32)}${(seconds * 1000).toFixed(0).padStart(6)} ms   ${rates} looks`);
  }
}

const isFast = [benchFloods(), benchSoundings()];
benchCompartments();
console.log(
  `\nwanted: floods ${WANTED_RATIO}x, soundings under ${WANTED_POSTERIOR * 1000} ms: ${isFast.every(Boolean) ? "met" : "NOT met"}`,
);
process.exit(isFast.every(Boolean) ? 0 : 1);
