import {
  simulateFlood,
  type FloodCase,
  type FloodRun,
  type HullForm,
  type PlacedOpening,
  type PlacedPump,
} from "#flooding";
import { repeatableStream } from "#numerics";

/** A number drawn evenly on a logarithmic scale. */
function spread(draw: () => number, low: number, high: number): number {
  return low * (high / low) ** draw();
}

const between = (draw: () => number, low: number, high: number): number => low + (high - low) * draw();

const NAMES = ["fore", "middle", "after"] as const;

export function randomFixed(draw: () => number): FloodCase {
  const count = 1 + Math.floor(3 * draw());
  const names = NAMES.slice(0, count);
  // Every other case starts or ends with equal levels: √head has no slope there.
  const outside = between(draw, 0.1, 2.5);
  const compartments = names.map((name) => ({
    name,
    area: spread(draw, 0.3, 60),
    permeability: between(draw, 0.5, 1),
    level: draw() < 0.5 ? outside : between(draw, 0, 2.5),
  }));
  return {
    vessel: { kind: "fixed", outsideLevel: outside, compartments },
    openings: randomOpenings(draw, names),
    pumps: randomPumps(draw, names),
    duration: spread(draw, 60, 7200),
    step: 3600,
  };
}

export function randomFloating(draw: () => number, form: "box" | "wedge" | "family" | "wigley"): FloodCase {
  const length = spread(draw, 5, 25);
  const beam = length * between(draw, 0.25, 0.4);
  const depth = beam * between(draw, 0.4, 0.7);
  const size = { length, beam, depth, draught: depth * between(draw, 0.35, 0.7) };
  const hull: HullForm =
    form === "family" ? { form, ...size, blockCoefficient: between(draw, 0.35, 0.7) } : { form, ...size };
  const cut = length * between(draw, 0.3, 0.7);
  const compartments = [
    { name: "after", from: 0.05 * length, to: cut, permeability: between(draw, 0.6, 1) },
    { name: "fore", from: cut, to: 0.95 * length, permeability: between(draw, 0.6, 1) },
  ];
  const names = ["after", "fore"];
  return {
    vessel: { kind: "floating", hull, compartments, lostWhen: draw() < 0.5 ? "deck-edge" : "foundered" },
    openings: randomOpenings(draw, names),
    pumps: randomPumps(draw, names),
    duration: spread(draw, 60, 3600),
    step: 3600,
  };
}

/** A box with one space in her middle: she sinks evenly while she is stiff, and lists once she is not. */
export function randomEven(draw: () => number): FloodCase {
  const { vessel, ...boat } = randomFloating(draw, "box");
  if (vessel.kind !== "floating" || vessel.hull.form !== "box") throw new Error("a box was asked for");
  const half = vessel.hull.length * between(draw, 0.1, 0.48);
  const middle = vessel.hull.length / 2;
  const space = { name: "after", from: middle - half, to: middle + half, permeability: between(draw, 0.6, 1) };
  const names = ["after"];
  const openings = [...randomOpenings(draw, names), ...(draw() < 0.3 ? secondHole(draw) : [])];
  return { ...boat, vessel: { ...vessel, compartments: [space] }, openings, pumps: randomPumps(draw, names) };
}

function secondHole(draw: () => number): PlacedOpening[] {
  const opening = { kind: "hole", area: spread(draw, 1e-4, 0.3), height: between(draw, 0.02, 1.2) } as const;
  return [{ name: "second", into: "after", opening }];
}

function randomOpenings(draw: () => number, names: readonly string[]): PlacedOpening[] {
  const openings: PlacedOpening[] = names.map((into, i) => {
    const from = draw() < 0.4 && i > 0 ? { from: names[i - 1]! } : {};
    const height = between(draw, 0.02, 1.2);
    if (draw() < 0.3) {
      const opening = { kind: "slot", width: spread(draw, 0.01, 1), sill: height, top: height + 0.3 } as const;
      return { name: `slot ${i}`, into, opening, ...from };
    }
    return { name: `hole ${i}`, into, opening: { kind: "hole", area: spread(draw, 1e-4, 0.3), height }, ...from };
  });
  return openings;
}

function randomPumps(draw: () => number, names: readonly string[]): PlacedPump[] {
  return names
    .filter(() => draw() < 0.6)
    .map((compartment) => ({
      name: `pump ${compartment}`,
      compartment,
      delivery: { kind: "steady", flow: spread(draw, 1e-4, 0.05) },
      from: draw() < 0.5 ? 0 : between(draw, 0, 600),
      ...(draw() < 0.3 ? { refuel: { runtime: 900, pause: 120 } } : {}),
    }));
}

/** What is wrong with a run, in words; nothing where every number is finite, the steps few and no water lost. */
function faultsOf(run: FloodRun, given: FloodCase): string[] {
  const most = run.series.reduce((sum, { inflow }) => Math.max(sum, Math.abs(inflow) * given.duration), 1);
  return [
    ...(numbersOf(run).every(Number.isFinite) ? [] : ["a number that is not finite"]),
    ...(Math.abs(run.volumeError) < 1e-9 * most ? [] : [`${run.volumeError} m³ lost`]),
    ...(run.counters.steps < 20_000 ? [] : [`${run.counters.steps} steps`]),
    ...(run.outcome.kind === "gave-up" ? [run.outcome.because] : []),
  ];
}

function numbersOf({ series, events, volumeError }: FloodRun): number[] {
  const seen = series.flatMap((sample) => [
    ...Object.values(sample.water),
    ...Object.values(sample.levels),
    sample.inflow,
    sample.pumped,
    ...Object.values(sample.attitude ?? {}),
  ]);
  return [...seen, ...events.map(({ at }) => at), volumeError];
}

/** Floods as many random cases and tells what is wrong with which. */
export function faultsOfMany(count: number, seed: number, make: (draw: () => number) => FloodCase): string[] {
  const faults: string[] = [];
  for (let n = 0; n < count; n += 1) {
    const given = make(repeatableStream(seed * 1_000_003 + n));
    for (const fault of faultsOf(simulateFlood(given), given)) faults.push(`seed ${seed}, case ${n}: ${fault}`);
  }
  return faults;
}
