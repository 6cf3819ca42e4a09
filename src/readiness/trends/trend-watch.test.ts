import { ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import type { Run } from "../state.ts";
import { sayWatch, trendLimit, watchesOf } from "./trend-watch.ts";

const [stage] = SAMPLE_PATTERN.stages;
const primed = { ...stage!.steps[0]!, timer: { kind: "prime", atMost: 60 } as const };
const pattern = { ...SAMPLE_PATTERN, stages: [{ ...stage!, steps: [primed] }] };
const kit = kitOf(new Hand("tablet", 0, "2026-01-10", "a").enrol());

const at = (index: number) => `2026-01-${String(index + 10)}T09:00:00+00:00`;

function primes(...seconds: number[]) {
  const runs: readonly Run[] = seconds.map((primeSeconds, index) => ({
    at: at(index),
    turnaround: `t${index}`,
    primeSeconds,
  }));
  return watchesOf({ ...kit, runs }, pattern).map((watch) => sayWatch(watch, ENGLISH.standing));
}

describe("a trend worth watching", () => {
  it("gets worse and would pass its limit, changing as much again", () => {
    expect(primes(22, 30, 34, 36, 45, 47, 50, 54, 58)).toEqual([
      "Prime: slower by 32 s over 9 runs. Last 58 s; at most 60 s.",
    ]);
  });

  it("is none where it is far from its limit, gets better, or only scatters", () => {
    expect(primes(20, 21, 22, 23, 24, 25)).toEqual([]);
    expect(primes(58, 54, 50, 45, 40, 36)).toEqual([]);
    expect(primes(50, 58, 49, 57, 52, 55)).toEqual([]);
  });

  it("is none where the pattern holds it to nothing", () => {
    expect(trendLimit("pulls", pattern)).toBeUndefined();
    expect(trendLimit("delivery", SAMPLE_PATTERN)).toBe(SAMPLE_PATTERN.hydraulics?.proof.notes);
    expect(trendLimit("prime", pattern)).toBe(60);
  });
});
