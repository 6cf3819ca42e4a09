import { fetchWords } from "#words";
import type { Pattern } from "#kit";
import { describe, expect, it } from "vitest";
import { BOAT, SHED, sampleKit, sampleStanding } from "#web/pages/board/sample-kits.ts";
import type { Call } from "./before-launch.ts";
import { saySooner, soonerBoat } from "./sooner-boat.ts";

const words = { launch: await fetchWords("en", "launch"), standing: await fetchWords("en", "standing") };

const ENGINE = { id: "engine", engine: { tank: 0.003, burn: [], fuel: "petrol" } } as unknown as Pattern;
const INSHORE = {
  id: "b1",
  name: "Inshore",
  place: "shed",
  speed: 10,
  launch: 600,
  setUp: 600,
  carries: 2,
  mains: false,
  retired: false,
};
const ALL_WEATHER = { ...INSHORE, id: "b2", name: "All-weather", place: "boat", launch: 300 };
const CALL: Call = { distance: 6000 };

function viewWith(ready: readonly string[]) {
  const kits = [sampleKit("1", { pattern: "engine@1" }), sampleKit("2", { pattern: "engine@1", place: "boat" })];
  return {
    boats: [INSHORE, ALL_WEATHER],
    place: SHED,
    kits,
    standings: new Map(kits.map(({ id }) => [id, sampleStanding(ready.includes(id) ? "ready" : "grounded")] as const)),
    patterns: new Map([["engine@1", ENGINE]]),
    places: [SHED, BOAT],
  };
}

function said(ready: readonly string[], call: Call = CALL): string | undefined {
  const sooner = soonerBoat(viewWith(ready), call, words);
  return sooner && saySooner(sooner, words.launch);
}

describe("another boat of the station", () => {
  it("is named where the boat chosen has no kit to take and she has", () => {
    expect(said(["2"])).toBe(
      "The boat chosen has no kit to take. With All-weather the first pump can be pumping in about 25\u00a0min.",
    );
  });

  it("is named where her first pump runs sooner", () => {
    expect(said(["1", "2"])).toBe(
      "With All-weather the first pump can be pumping sooner: in about 25\u00a0min, not 30\u00a0min.",
    );
  });

  it("is not named where she is no sooner, has no kit herself, or the distance is not told", () => {
    expect(said(["1", "2"], { ...CALL, boat: "b2" })).toBeUndefined();
    expect(said(["1"])).toBeUndefined();
    expect(said([])).toBeUndefined();
    expect(said(["2"], {})).toBeUndefined();
  });

  it("goes by her own figures, and not by those told of the boat chosen", () => {
    expect(said(["1", "2"], { ...CALL, launch: 240 })).toBeUndefined();
    expect(said(["1", "2"], { ...CALL, launch: 3000 })).toContain("in about 25\u00a0min, not 70\u00a0min");
  });
});
