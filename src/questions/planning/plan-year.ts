import { planYear } from "#planning";
import { defineQuestion } from "../question.ts";
import { planYearInput, planYearOutput } from "./plan-year-fields.ts";

/** Time for the solver where none is given: about a tenth of a second per kit [s]. */
const SECONDS_PER_KIT = 0.08;
const LEAST_SECONDS = 1;
const MOST_SECONDS = 8;

/** The year planned so that places keep their strength with the fewest openings. */
export const planYearQuestion = defineQuestion({
  name: "plan-year",
  summary: "Which kit is opened in which week and what is renewed then, so that strength holds with fewest openings.",
  input: planYearInput,
  output: planYearOutput,
  example: {
    start: "2027-01-04",
    weeks: 26,
    places: [{ id: "harbour", strength: 1 }],
    kits: [
      {
        id: "P-1",
        place: "harbour",
        daysOut: 3,
        minutes: 150,
        needs: ["proof run"],
        clocks: [
          { id: "proof run", lastGoodDay: "2027-02-20", renewedFor: 180, effect: "grounds" },
          {
            id: "flare",
            lastGoodDay: "2027-03",
            renewedFor: 1095,
            effect: "limits",
            parts: [{ part: "F-1", count: 1 }],
          },
        ],
      },
      {
        id: "P-2",
        place: "harbour",
        daysOut: 3,
        minutes: 150,
        needs: ["proof run"],
        clocks: [{ id: "proof run", lastGoodDay: "2027-02-24", renewedFor: 180, effect: "grounds" }],
      },
    ],
    people: [
      { id: "first", hoursPerWeek: 3, may: ["proof run"], absent: [{ from: "2027-02-08", to: "2027-02-21" }] },
      { id: "second", hoursPerWeek: 2 },
    ],
    parts: [{ id: "F-1", onHand: 0, arrivals: [{ week: 3, count: 2 }] }],
  },
  answer: ({ limitSeconds, ...station }, { solver, mostSeconds = Number.POSITIVE_INFINITY }) => {
    const usual = Math.min(MOST_SECONDS, Math.max(LEAST_SECONDS, station.kits.length * SECONDS_PER_KIT));
    const plan = planYear(station, { solver, seconds: Math.min(limitSeconds ?? usual, mostSeconds) });
    const openings = plan.openings.map(({ beside, ...one }) => ({
      ...one,
      renews: [...one.renews],
      by: [...one.by],
      ...(beside && { beside: [...beside] }),
    }));
    return { ...plan, openings, short: [...plan.short], hours: [...plan.hours] };
  },
});
