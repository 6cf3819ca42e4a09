import { addDays } from "#base";
import { planYear, type YearStation } from "#planning";
import { describe, expect, it } from "vitest";

const START = "2027-01-04";

/** Twelve kits, one due in each week, each an hour's work for one; people with these hours a week. */
function station(hours: Readonly<Record<string, number>>): YearStation {
  const kits = Array.from({ length: 12 }, (_, at) => ({
    id: `k${at}`,
    place: "p",
    daysOut: 1,
    minutes: 60,
    clocks: [{ id: "fuel", lastGoodDay: addDays(START, 7 * at + 6), renewedFor: 700, effect: "grounds" as const }],
  }));
  return {
    start: START,
    weeks: 12,
    places: [{ id: "p", strength: 1 }],
    kits,
    people: Object.entries(hours).map(([id, hoursPerWeek]) => ({ id, hoursPerWeek })),
    fixed: kits.map(({ id }, week) => ({ kit: id, week })),
  };
}

function openingsBy(of: YearStation): Record<string, number> {
  const count: Record<string, number> = {};
  for (const { by } of planYear(of, { seconds: 0 }).openings) for (const one of by) count[one] = (count[one] ?? 0) + 1;
  return count;
}

describe("the work of a planned year among people", () => {
  it("is shared evenly where all have the same hours", () => {
    expect(openingsBy(station({ ann: 3, ben: 3, cat: 3, dan: 3 }))).toEqual({ ann: 3, ben: 3, cat: 3, dan: 3 });
  });

  it("is shared by their hours where those differ", () => {
    expect(openingsBy(station({ ann: 2, ben: 4 }))).toEqual({ ann: 4, ben: 8 });
  });

  it("asks nobody who is away, and evens out what the others did meanwhile", () => {
    const of = station({ ann: 3, ben: 3 });
    const absent = [{ from: START, to: addDays(START, 7 * 4 - 1) }];
    const plan = openingsBy({ ...of, people: of.people.map((one) => (one.id === "ann" ? { ...one, absent } : one)) });
    // Ann has 24 h in the twelve weeks and Ben 36 h, so that 12 h of work fall 4.8 to 7.2.
    expect(plan).toEqual({ ann: 5, ben: 7 });
  });
});
