import { describe, expect, it } from "vitest";
import { rateOf, startingOf, type Demands, type Pooling, type RatePooling } from "../index.ts";

/** Means are asked for many times over. */
function remembered(mean: (own: Demands, fleet: readonly Demands[]) => number): typeof mean {
  const known = new Map<string, number>();
  return (own, fleet) => {
    const key = [own, ...fleet.toSorted((one, other) => one.failures - other.failures)]
      .map(({ failures, trials }) => `${failures}/${trials}`)
      .join(" ");
    const told = known.get(key) ?? mean(own, fleet);
    known.set(key, told);
    return told;
  };
}

const starting = (pooling: Pooling) =>
  remembered(({ failures, trials }, fleet) => {
    const record = { least: failures, most: failures, trials };
    return startingOf(record, { kind: "fleet", fleet, pooling }).failing.mean;
  });

/** Each demand as a year watched. */
const rated = (pooling: RatePooling) =>
  remembered(({ failures, trials }, fleet) => {
    const years = fleet.map((one) => ({ failures: one.failures, time: one.trials }));
    return rateOf({ failures, time: trials }, { kind: "fleet", fleet: years, pooling }).rate.mean;
  });

const upTo = (most: number) => Array.from({ length: most + 1 }, (_, i) => i);

interface Fleets {
  readonly own: readonly number[];
  readonly ownMost: (trials: number) => number;
  readonly trials: number;
  readonly others: number;
  readonly most: number;
}

/** Every fleet of so many others, no two alike but for their order. */
function fleetsOf({ trials, others, most }: Fleets): readonly (readonly Demands[])[] {
  const grown = (fleets: readonly (readonly number[])[]) =>
    fleets.flatMap((fleet) => upTo(most).flatMap((x) => (x >= (fleet.at(-1) ?? 0) ? [[...fleet, x]] : [])));
  let fleets: readonly (readonly number[])[] = [[]];
  for (let i = 0; i < others; i += 1) fleets = grown(fleets);
  return fleets.map((fleet) => fleet.map((failures) => ({ failures, trials })));
}

/** By how much one failure more of any other lowers the mean at most, over all of them. */
function deepest(mean: ReturnType<typeof remembered>, all: Fleets): number {
  let fall = 0;
  for (const trials of all.own)
    for (const failures of upTo(all.ownMost(trials)))
      for (const fleet of fleetsOf(all))
        for (const k of fleet.keys()) {
          if (fleet[k]!.failures >= all.most) continue;
          const more = fleet.map((one, i) => (i === k ? { ...one, failures: one.failures + 1 } : one));
          const own = { failures, trials };
          fall = Math.max(fall, mean(own, fleet) - mean(own, more));
        }
  return fall;
}

/** Two others asked six times each, whatever failed; one's own six or twelve times. */
const ANY: Fleets = { own: [6, 12], ownMost: (trials) => trials, trials: 6, others: 2, most: 6 };
/** Three others asked twelve times each, of which at most a quarter failed, as with kits that are kept. */
const KEPT: Fleets = { own: [6, 12], ownMost: (trials) => trials / 4, trials: 12, others: 3, most: 3 };
const PATIENT = { timeout: 300_000 };

describe("how far one failure more among others may lower the chance told, in every small fleet", PATIENT, () => {
  it.each([
    ["wary", 0.06, 0.0112],
    ["whole", 0.102, 0.048],
    ["fitted", 0.495, 0.08],
  ] as const)("of failing when asked, %s: by %d of any, by %d of kits that are kept", (pooling, any, kept) => {
    const mean = starting(pooling);
    expect(deepest(mean, ANY)).toBeLessThan(any);
    expect(deepest(mean, KEPT)).toBeLessThan(kept);
  });

  it.each([
    ["wary", 0.057, 0.0093],
    ["fitted", 0.295, 0.088],
  ] as const)("of failures a year, %s: by %d of any, by %d of kits that are kept", (pooling, any, kept) => {
    const mean = rated(pooling);
    expect(deepest(mean, ANY)).toBeLessThan(any);
    expect(deepest(mean, KEPT)).toBeLessThan(kept);
  });
});
