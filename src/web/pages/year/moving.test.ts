import { planYear } from "#planning";
import { describe, expect, it } from "vitest";
import { moved, roomOf, without } from "./moving.ts";

const CLOCK = { id: "fuel", lastGoodDay: "2027-01-20", renewedFor: 90, effect: "grounds" as const };
const KIT = { id: "k5", place: "p", daysOut: 1, minutes: 60, clocks: [CLOCK] };
const INPUT = {
  start: "2027-01-04",
  weeks: 52,
  places: [{ id: "p", strength: 1 }],
  kits: [KIT, { ...KIT, id: "k6" }],
  people: [{ id: "ann", hoursPerWeek: 4, absent: [] }],
  fixed: [],
};
const plan = (fixed: ReturnType<typeof moved>) => planYear({ ...INPUT, fixed }, { seconds: 0 });
const weeksOf = (answer: ReturnType<typeof plan>, kit: string) =>
  answer.openings.filter((one) => one.kit === kit).map(({ week }) => week);

describe("moving an opening of the plan", () => {
  it("moves it, twice over, and adds none beside it", () => {
    const before = plan([]);
    const [first = 0] = weeksOf(before, "k5");
    const once = moved({ answer: before, input: INPUT }, { kit: "k5", week: first }, first + 1);
    const after = plan(once);
    expect(weeksOf(after, "k5")[0]).toBe(first + 1);
    const twice = moved({ answer: after, input: { ...INPUT, fixed: once } }, { kit: "k5", week: first + 1 }, first + 2);
    expect(twice).toHaveLength(1);
    const last = plan(twice);
    expect(weeksOf(last, "k5")[0]).toBe(first + 2);
    for (const one of [after, last]) expect(one.openings.length).toBeLessThanOrEqual(before.openings.length);
  });

  it("stays between its kit's other openings", () => {
    const openings = [3, 9, 20].map((week) => ({ kit: "k5", week }));
    expect(roomOf([...openings, { kit: "k6", week: 8 }], { kit: "k5", week: 9 }, 52)).toEqual({ after: 3, before: 20 });
    expect(roomOf(openings.slice(1, 2), { kit: "k5", week: 9 }, 52)).toEqual({ after: -1, before: 52 });
  });

  it("is taken back by letting it go", () => {
    const fixed = [
      { kit: "k5", week: 3 },
      { kit: "k6", week: 3 },
    ];
    expect(without(fixed, { kit: "k5", week: 3 })).toEqual([{ kit: "k6", week: 3 }]);
  });
});
