import type { KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { acceptedOpenings, isChanged } from "./accepting.ts";

const OPENINGS = [
  { id: "a", week: "2027-01-04", renews: ["fuel"], by: ["ann"] },
  { id: "b", week: "2027-06-07", renews: ["fuel"], by: ["ann"] },
];
const KIT = { id: "k1", planned: { openings: OPENINGS } } as unknown as KitState;
const ASKED = { start: "2027-01-04", fixed: [{ kit: "k1", week: 2 }] };

describe("accepting a plan", () => {
  it("keeps an opening's id when it moves, and makes ids for new ones only", () => {
    const openings = [5, 2, 30].map((week) => ({ kit: "k1", week, renews: ["fuel"], by: ["ann"] }));
    const accepted = acceptedOpenings(
      KIT,
      { openings: [...openings, { ...openings[0]!, kit: "k2" }] },
      ASKED,
      () => "new",
    );
    expect(accepted.map(({ id, week, fixed }) => [id, week, fixed])).toEqual([
      ["a", "2027-01-18", true],
      ["b", "2027-02-08", undefined],
      ["new", "2027-08-02", undefined],
    ]);
    expect(isChanged(KIT, accepted)).toBe(true);
    expect(isChanged(KIT, OPENINGS)).toBe(false);
  });
});
