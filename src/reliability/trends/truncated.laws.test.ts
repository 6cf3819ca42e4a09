import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { laplace, powerLaw } from "./index.ts";

/** Events at a steady rate of one, watched to a fixed end. */
function toEnd(end: number, seed: number): readonly number[] {
  const random = repeatableStream(seed);
  const times: number[] = [];
  for (let at = -Math.log(random()); at < end; at -= Math.log(random())) times.push(at);
  return times;
}

/** As many events as told, watched to the last of them. */
function toLast(count: number, seed: number): readonly number[] {
  const random = repeatableStream(seed);
  let at = 0;
  return Array.from({ length: count }, () => (at -= Math.log(random())));
}

const ROUNDS = 4000;

/** Share of steady histories that are told to be unsteady at one in ten. */
function accused(history: (seed: number) => { readonly times: readonly number[]; readonly end: number }) {
  const told = Array.from({ length: ROUNDS }, (_, i) => ({ kind: "times" as const, ...history(i + 1) }));
  const share = (p: (one: (typeof told)[number]) => number) => told.filter((one) => p(one) < 0.1).length / ROUNDS;
  return { power: share((one) => powerLaw(one, 0.9)?.p ?? 1), laplace: share((one) => laplace(one).p) };
}

describe("events at a steady rate", () => {
  it("are told to be unsteady one time in ten, watched to a fixed end", () => {
    const { power, laplace: mean } = accused((seed) => ({ times: toEnd(8, seed), end: 8 }));
    expect(Math.abs(power - 0.1)).toBeLessThan(0.015);
    expect(Math.abs(mean - 0.1)).toBeLessThan(0.015);
  });

  it("are told so as seldom, watched to their last event: six of them", () => {
    const { power, laplace: mean } = accused((seed) => {
      const times = toLast(6, seed);
      return { times, end: times.at(-1) ?? 0 };
    });
    expect(Math.abs(power - 0.1)).toBeLessThan(0.015);
    expect(Math.abs(mean - 0.1)).toBeLessThan(0.02);
  });

  it("DERIVED by hand: 1, 2, 4 watched to 4 leaves 1 and 2 to speak: z of their mean 1.5 against 2", () => {
    const events = { kind: "times" as const, times: [1, 2, 4], end: 4 };
    expect(laplace(events).z).toBeCloseTo((3 - 4) / (4 * Math.sqrt(2 / 12)), 12);
    expect(powerLaw(events, 0.9)!.shape).toBeCloseTo(3 / (Math.log(4) + Math.log(2)), 12);
    expect(laplace({ ...events, times: [4] })).toEqual({ z: 0, p: 1 });
  });
});
