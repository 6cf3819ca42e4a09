import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { deliveredOf } from "./delivered.ts";

const SEEN = { p05: 0.6, p50: 0.8, p95: 1 };
const RUN = { from: "2026-01-10T10:00:00Z", space: "s", flow: 0.005 };

function sheet(...pumps: readonly object[]) {
  return { pumps } as unknown as CasualtyState;
}

function answer(reading: object): OnSceneAnswer {
  const pumps = [
    { pump: "k1", seen: SEEN, doubt: "none" },
    { pump: "hers", seen: SEEN, doubt: "none" },
  ];
  return { reading: { soundings: 4, misfit: false, ...reading }, pumps } as unknown as OnSceneAnswer;
}

const OURS = { pump: "k1", kit: "k1", runs: [RUN] };

describe("what is told of delivery at the closing", () => {
  it("is of our own kits that ran, and of nobody else's pumps", () => {
    const all = sheet(OURS, { pump: "hers", runs: [RUN] }, { pump: "k2", kit: "k2", runs: [] });
    expect(deliveredOf(all, answer({}))).toEqual([{ pump: "k1", ...SEEN }]);
  });

  it("is nothing where soundings show nothing of it", () => {
    expect(deliveredOf(sheet(OURS), undefined)).toEqual([]);
    expect(deliveredOf(sheet(OURS), answer({ soundings: 2 }))).toEqual([]);
    expect(deliveredOf(sheet(OURS), answer({ misfit: true }))).toEqual([]);
  });
});
