import { isInputError } from "#base";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ask } from "./ask.ts";

/* Whatever is asked, the answer is finite figures or a fault with its field: no stack trace, no NaN, no hang. */

/** Evenly, to the millimetre: doubles drawn by their bits are nearly all tiny. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((n) => n / 1000);
const size = (most: number) =>
  fc.oneof({ weight: 60, arbitrary: between(0, most) }, fc.constantFrom(0, -1, 1e-9, 400, "2 ft 6 in", "x"));
const sometimes = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const sizes = { length: size(12), beam: size(4), depth: sometimes(size(2)), draught: size(1.5) };
const station = fc.record({
  x: size(12),
  offsets: fc.array(fc.record({ z: size(2), halfBreadth: size(2) }), { minLength: 2, maxLength: 4 }),
});
const hull = fc.oneof(
  fc.record({ form: fc.constantFrom("box", "wedge", "wigley"), ...sizes }),
  fc.record({
    form: fc.constant("family"),
    ...sizes,
    blockCoefficient: between(0.2, 0.95),
  }),
  fc.record({
    form: fc.constant("offsets"),
    draught: sometimes(size(1.5)),
    stations: fc.array(station, { minLength: 2, maxLength: 4 }),
  }),
);
const space = fc.record({
  from: size(6),
  to: size(12),
  permeability: sometimes(between(0.01, 1)),
  sideFrom: sometimes(between(-3, 3)),
  sideTo: sometimes(between(-3, 3)),
  floor: sometimes(size(1)),
  top: sometimes(size(2)),
  level: sometimes(size(1)),
  water: sometimes(size(3)),
});
const lie = {
  hull,
  draught: sometimes(size(2)),
  trim: sometimes(between(-3, 3)),
  kg: sometimes(size(3)),
};
const heel = between(-1.3, 1.3);

function askWhole(name: string, given: object): boolean {
  const asked: unknown = JSON.parse(JSON.stringify(given));
  try {
    const text = JSON.stringify(ask(name, asked));
    expect(text).not.toContain("null");
    return true;
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    expect(thrown.faults.length).toBeGreaterThan(0);
    for (const { field, remedy } of thrown.faults) expect(field.length * remedy.length).toBeGreaterThan(0);
    return false;
  }
}

function fuzz(name: string, given: fc.Arbitrary<object>, numRuns: number): void {
  let answered = 0;
  fc.assert(
    fc.property(given, (one) => void (answered += askWhole(name, one) ? 1 : 0)),
    { numRuns, seed: 7 },
  );
  expect(answered).toBeGreaterThan(0);
}

describe("whatever is asked of a boat", () => {
  it("hydrostatics", () => fuzz("hydrostatics", fc.record({ ...lie, heel: sometimes(heel) }), 800), 60_000);

  it("righting", () => {
    const given = fc.record({
      ...lie,
      heels: fc.array(heel, { minLength: 1, maxLength: 3 }),
      compartments: fc.array(space, { maxLength: 2 }),
    });
    fuzz("righting", given, 150);
  }, 60_000);

  it("flood", () => {
    const opening = fc.record({
      kind: fc.constant("hole"),
      area: size(0.02),
      height: sometimes(size(1)),
      x: sometimes(size(12)),
    });
    const pump = fc.record({
      flow: size(0.02),
      suctionHeight: sometimes(size(1)),
      from: sometimes(size(600)),
      until: sometimes(size(900)),
    });
    const legal = fc.record({
      hull: fc.record({
        form: fc.constantFrom("box", "wedge"),
        length: between(6, 12),
        beam: between(2, 4),
        depth: between(1.2, 2),
        draught: between(0.3, 1),
      }),
      kg: sometimes(between(0.2, 3)),
      trim: sometimes(between(-2, 2)),
      compartments: fc.array(fc.record({ from: between(0.5, 2), to: between(3, 5), level: sometimes(between(0, 1)) }), {
        minLength: 1,
        maxLength: 1,
      }),
    });
    const wild = fc.record({ ...lie, compartments: fc.array(space, { minLength: 1, maxLength: 2 }) });
    const given = fc.record({
      vessel: fc.oneof(legal, wild),
      openings: fc.array(opening, { maxLength: 2 }),
      pumps: fc.array(pump, { maxLength: 2 }),
      duration: fc.constant(900),
      step: fc.constant(300),
    });
    fuzz("flood", given, 250);
  }, 60_000);
});
