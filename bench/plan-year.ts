/**
 * A year planned for 12 kits and for 100, beside each thing done on its last day and beside the solver's bound. Run with
 * `npm run bench -- plan-year`. The plans are read by the judge of the tests, which shares no code with the planner.
 */
import { planYear, type YearStation } from "#planning";
import { loadSolver } from "#solver";
import { judgeYear } from "../test/judges/year-plan/judge.ts";

const START = "2027-01-04";
/** Kits, places, people, the longest it may take [s], and time for the solver [s]. */
const SIZES = [
  { kits: 12, places: 3, people: 4, limit: 2, seconds: 1 },
  { kits: 100, places: 20, people: 20, limit: 60, seconds: 25 },
] as const;

const solver = await loadSolver();
let failed = 0;
for (const size of SIZES) {
  const station = stationOf(size.kits, size.places, size.people);
  for (const seconds of [0, size.seconds]) failed += measure(station, size.limit, seconds);
}
process.exit(failed);

/** @returns 1 where it took too long or the judge complains */
function measure(station: YearStation, limit: number, seconds: number): number {
  const began = performance.now();
  const plan = planYear(station, seconds > 0 ? { solver, seconds } : { seconds });
  const took = (performance.now() - began) / 1000;
  const { complaints, late } = judgeYear(station, plan);
  const worst = Math.max(...plan.hours);
  console.log(
    [
      `${station.kits.length} kits, ${seconds > 0 ? "solver" : "quick"}: ${took.toFixed(2)} s (limit ${limit})`,
      `  plan:     ${plan.openings.length} openings, worst week ${worst.toFixed(2)} h, ${plan.short.length} weeks short, ${plan.wasted} days wasted`,
      `  last day: ${plan.naive.openings} openings, worst week ${plan.naive.worstHours.toFixed(2)} h, ${plan.naive.shortWeeks} weeks short, ${plan.naive.wasted} days wasted`,
      `  gap to what is proved: ${plan.gap.toFixed(4)}; lapsed ${late}; complaints of the judge: ${complaints.length}`,
    ].join("\n"),
  );
  return took > limit || complaints.length > 0 ? 1 : 0;
}

/** A made-up station: every place spares one kit, half its kits renew something that takes parts. */
function stationOf(kits: number, places: number, people: number): YearStation {
  const next = dice(kits);
  const day = (days: number) => new Date(Date.parse(START) + days * 86_400_000).toISOString().slice(0, 10);
  const each = Math.floor(kits / places);
  return {
    start: START,
    weeks: 52,
    places: Array.from({ length: places }, (_, at) => ({ id: `place-${at}`, strength: each - 1 })),
    kits: Array.from({ length: kits }, (_, at) => ({
      id: `kit-${at}`,
      place: `place-${at % places}`,
      daysOut: 3 + Math.floor(next() * 4),
      minutes: [120, 150, 180][at % 3]!,
      needs: at % 2 === 0 ? ["proof run"] : ["proof run", "fuel"],
      clocks: [
        { id: "proof run", lastGoodDay: day(14 + next() * 170), renewedFor: 183, effect: "grounds" as const },
        { id: "fuel", lastGoodDay: day(14 + next() * 106), renewedFor: 120, effect: "grounds" as const },
        { id: "first aid", lastGoodDay: day(next() * 700), renewedFor: 730, effect: "limits" as const },
        ...(at % 2 === 0
          ? [
              {
                id: "gasket",
                lastGoodDay: day(60 + next() * 300),
                renewedFor: 365,
                effect: "grounds" as const,
                parts: [{ part: "G", count: 1 }],
              },
            ]
          : []),
      ],
    })),
    people: Array.from({ length: people }, (_, at) => ({
      id: `person-${at}`,
      hoursPerWeek: 2 + (at % 3),
      may: at % 2 === 0 ? ["proof run", "fuel"] : ["proof run"],
      absent: [{ from: day(at * 14), to: day(at * 14 + 20) }],
    })),
    parts: [{ id: "G", onHand: Math.ceil(kits / 6), arrivals: [{ week: 10, count: kits }] }],
  };
}

/** Park and Miller's generator, so that every run measures the same station. */
function dice(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}
