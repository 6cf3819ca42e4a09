import { addDays, daysBetween } from "#base";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandsOf } from "./bands.ts";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { lapsesOf, standingOf } from "./standing.ts";
import type { KitState, Standing } from "../state.ts";

const FIRST = "2026-01-10";
const DAYS = 900;

interface Story {
  readonly cells: number;
  readonly fuel: number;
  readonly muster: number | undefined;
  readonly finding: "grounds" | "limits" | "notes" | undefined;
  readonly livedWith: number | undefined;
  readonly fuelAge: number | undefined;
}

const story: fc.Arbitrary<Story> = fc.record({
  cells: fc.integer({ min: -30, max: DAYS }),
  fuel: fc.integer({ min: -200, max: 0 }),
  muster: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined }),
  finding: fc.option(fc.constantFrom("grounds" as const, "limits" as const, "notes" as const), { nil: undefined }),
  livedWith: fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined }),
  fuelAge: fc.option(fc.integer({ min: 1, max: 400 }), { nil: undefined }),
});

const RUNS = { seed: 20260114, numRuns: 60 };

describe("standing over the days", () => {
  it("READY-10 changes first on the day after its lapse, as day by day counting finds", () => {
    fc.assert(
      fc.property(story, fc.integer({ min: 0, max: 500 }), (told, ahead) => {
        const { kit, policy } = tell(told);
        const today = addDays(FIRST, ahead);
        const now = standingOf(kit, SAMPLE_PATTERN, today, policy);
        expect(now.lapse?.day).toBe(isReady(now) ? lastDayLike(kit, policy, today, now) : undefined);
      }),
      RUNS,
    );
  });

  it("agrees on every day with the band it lies in, and the bands leave no gap", () => {
    fc.assert(
      fc.property(story, (told) => {
        const { kit, policy } = tell(told);
        const range = { from: FIRST, to: addDays(FIRST, 400) };
        const bands = bandsOf(kit, SAMPLE_PATTERN, range, policy);
        expect(bands[0]?.from).toBe(range.from);
        expect(bands.at(-1)?.to).toBe(range.to);
        bands.slice(1).forEach((band, at) => expect(band.from).toBe(addDays(bands[at]!.to, 1)));
        for (const band of bands) {
          for (let day = band.from; day <= band.to; day = addDays(day, 1)) {
            const { standing, because } = standingOf(kit, SAMPLE_PATTERN, day, policy);
            expect([standing, because[0]?.said]).toEqual([band.standing, band.because]);
          }
        }
      }),
      { ...RUNS, numRuns: 25 },
    );
  });

  it("READY-9 never gets better by itself", () => {
    const order = ["ready", "ready-with-limits", "grounded"];
    fc.assert(
      fc.property(story, (told) => {
        const { kit, policy } = tell(told);
        const range = { from: FIRST, to: addDays(FIRST, DAYS) };
        const grades = bandsOf(kit, SAMPLE_PATTERN, range, policy).map((band) => order.indexOf(band.standing));
        expect(grades).toEqual(grades.toSorted((one, other) => one - other));
      }),
      RUNS,
    );
  });

  it("lists lapses in order of day", () => {
    fc.assert(
      fc.property(story, (told) => {
        const { kit, policy } = tell(told);
        const days = lapsesOf(kit, SAMPLE_PATTERN, policy).map((lapse) => lapse.day);
        expect(days).toEqual(days.toSorted());
      }),
      RUNS,
    );
  });
});

function tell(told: Story) {
  const hand = new Hand().enrol().open().doAll().seal();
  const printed = addDays(FIRST, told.cells);
  hand.write("item-fitted", { item: "cells", fitted: FIRST, printed, quantity: 2 });
  hand.write("item-fitted", { item: "fuel", fitted: addDays(FIRST, told.fuel), quantity: 1 });
  if (told.finding) {
    const mode = { grounds: "pump-seized", limits: "torch-dim", notes: "pump-scratched" }[told.finding];
    const item = told.finding === "limits" ? "torch" : "pump";
    hand.write("finding-raised", { finding: "f", item, mode, effect: told.finding, photos: [] });
    const until = addDays(FIRST, told.livedWith ?? 0);
    const lived = { finding: "f", how: "lived-with" as const, name: "Ann", limit: "Gently.", until };
    if (told.livedWith !== undefined) hand.write("remedy-made", lived);
  }
  if (told.muster !== undefined) {
    hand.write("mustered", { sealSeen: "00500", containerSound: true }, addDays(FIRST, told.muster));
  }
  return { kit: kitOf(hand), policy: told.fuelAge === undefined ? {} : { fuelAge: { days: told.fuelAge } } };
}

/** The last day on which standing and limits are still as they are, found by trying every day. */
function lastDayLike(kit: KitState, policy: object, today: string, now: Standing): string | undefined {
  for (let day = today; daysBetween(today, day) < 1200; day = addDays(day, 1)) {
    const next = standingOf(kit, SAMPLE_PATTERN, addDays(day, 1), policy);
    if (next.standing !== now.standing || next.limits.join("|") !== now.limits.join("|")) return day;
  }
  return undefined;
}

function isReady({ standing }: Standing): boolean {
  return standing === "ready" || standing === "ready-with-limits";
}
