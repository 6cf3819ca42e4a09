import type { FloodEvent, FloodRun, PlacedPump } from "#flooding";

/** What the tests of whole floods write and read alike. SI units. */

export const disc = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
export const hole = (diameter: number, height = 0) => ({ kind: "hole", area: disc(diameter), height }) as const;
/** Where the end state is asked for: heads below a hundredth of a millimetre run out smoothly. */
export const RESTING = { relative: 1e-9, absolute: 1e-11, linearBelow: 1e-5 };
export const SHARP = { relative: 1e-10, absolute: 1e-12, linearBelow: 1e-9 };

export const eventAt = (run: FloodRun, kind: FloodEvent["kind"]): number =>
  run.events.find((event) => event.kind === kind)!.at;
export const levelAt = (run: FloodRun, at: number, name = "hold"): number =>
  run.series.find((sample) => Math.abs(sample.at - at) < 1e-9)!.levels[name]!;
export const waterAt = (run: FloodRun, at: number, name = "hold"): number =>
  run.series.find((sample) => Math.abs(sample.at - at) < 1e-9)!.water[name]!;

export function steadyPump(flow: number, more: Partial<PlacedPump> = {}): PlacedPump {
  return { name: "pump", compartment: "hold", delivery: { kind: "steady", flow }, ...more };
}
