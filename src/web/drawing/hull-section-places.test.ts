import { describe, expect, it } from "vitest";
import { placeProfile, placeStern, type HullDrawn } from "./hull-section-places.ts";

const FRAME = { left: 0, right: 300, top: 0, bottom: 200 };
const EVEN: HullDrawn = {
  length: 10,
  beam: 3,
  depth: 1.5,
  spaces: [{ name: "cabin", from: 0, to: 4 }],
  aft: 0.7,
  forward: 0.7,
  inside: [{ aft: 0.4, forward: 0.4 }],
  list: 0,
};

describe("a hull drawn from the side", () => {
  it("has less water inside than outside below the sea, and a deck above it", () => {
    const { water, sea, freeboard } = placeProfile(EVEN, FRAME);
    expect(water[0]!.surface).toBeGreaterThan(sea);
    expect(freeboard.deck).toBeLessThan(freeboard.sea);
  });

  it("puts the stern to the right and down as she trims by the stern", () => {
    const even = placeProfile(EVEN, FRAME);
    const stern = placeProfile({ ...EVEN, aft: 1.1, forward: 0.4 }, FRAME);
    expect(stern.freeboard.x).toBeGreaterThan(stern.ends.bow);
    expect(stern.freeboard.x).toBeGreaterThan(150);
    expect(stern.freeboard.deck).toBeGreaterThan(even.freeboard.deck);
    expect(placeProfile({ ...EVEN, aft: 0.4, forward: 1.1 }, FRAME).freeboard.x).toBeLessThan(150);
  });

  it("keeps the words at the low end clear of the sheer that rises from it", () => {
    const { freeboard } = placeProfile({ ...EVEN, aft: 1.1, forward: 0.4 }, FRAME);
    expect(freeboard.clear).toBeLessThan(freeboard.deck - 5);
  });

  it("draws a bulkhead where a space ends within her, none at her ends", () => {
    expect(placeProfile(EVEN, FRAME).bulkheads).toHaveLength(1);
    expect(placeProfile({ ...EVEN, spaces: [{ name: "boat", from: 0, to: 10 }] }, FRAME).bulkheads).toHaveLength(0);
  });
});

describe("a hull too deep for the field", () => {
  it("is drawn smaller, so that deck and keel stay in it", () => {
    const { freeboard, ends } = placeProfile({ ...EVEN, depth: 4, aft: 2, forward: 2 }, FRAME);
    expect(freeboard.deck).toBeGreaterThanOrEqual(FRAME.top);
    expect(ends.stern - ends.bow).toBeLessThan(300);
  });
});

describe("a hull drawn from astern", () => {
  it("turns by the list and keeps the water level", () => {
    const place = placeStern({ ...EVEN, list: Math.PI / 18 }, FRAME);
    expect(place.turn.degrees).toBeCloseTo(10, 9);
    expect(place.inside).toBe(placeStern(EVEN, FRAME).inside);
  });
});
