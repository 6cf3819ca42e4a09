import type { YearStation } from "#planning";
import fc from "fast-check";

const START = "2027-01-04";
const day = (days: number) => new Date(Date.parse(START) + days * 86_400_000).toISOString().slice(0, 10);

/** Sizes of stations drawn. */
export interface Sizes {
  readonly weeks: readonly [number, number];
  readonly kits: readonly [number, number];
  readonly clocks: number;
}

/**
 * Stations of these sizes: tight hours, absences, qualifications that some may see done, kits for two at once, a part that
 * arrives, sometimes a fixed opening, sometimes one that was moved.
 */
export function stations({ weeks, kits, clocks }: Sizes): fc.Arbitrary<YearStation> {
  return fc.integer({ min: weeks[0], max: weeks[1] }).chain((length) =>
    fc.record({
      start: fc.constant(START),
      weeks: fc.constant(length),
      places: fc.tuple(fc.integer({ min: 0, max: kits[1] }), fc.integer({ min: 0, max: 1 })).map(([harbour, slip]) => [
        { id: "harbour", strength: harbour },
        { id: "slip", strength: slip },
      ]),
      kits: fc
        .array(kit(length, clocks), { minLength: kits[0], maxLength: kits[1] })
        .map((list) => list.map((one, at) => ({ ...one, id: `kit-${at}` }))),
      people: people(length),
      parts: fc
        .record({ onHand: fc.integer({ min: 0, max: 2 }), week: fc.integer({ min: 0, max: length }) })
        .map((part) => [{ id: "seal", onHand: part.onHand, arrivals: [{ week: part.week, count: 2 }] }]),
      fixed: fc
        .option(fc.tuple(fc.integer({ min: 0, max: length - 1 }), fc.boolean(), fc.nat(2)), { freq: 3 })
        .map((drawn) => {
          if (drawn === null) return [];
          const [week, isMoved, by] = drawn;
          return [{ kit: "kit-0", week, ...(isMoved && { instead: { from: week - by, to: week + 1 } }) }];
        }),
    }),
  );
}

function kit(weeks: number, clocks: number) {
  return fc.record({
    id: fc.constant(""),
    place: fc.constantFrom("harbour", "harbour", "slip"),
    daysOut: fc.integer({ min: 0, max: 9 }),
    minutes: fc.constantFrom(60, 90, 120),
    needs: fc.constantFrom<string[]>([], ["run"], ["run", "fuel"]),
    hands: fc.constantFrom(1, 1, 1, 2, 3),
    clocks: fc
      .array(clock(weeks), { minLength: 1, maxLength: clocks })
      .map((list) => list.map((one, at) => ({ ...one, id: `clock-${at}` }))),
  });
}

function clock(weeks: number) {
  return fc.record({
    id: fc.constant(""),
    lastGoodDay: fc.integer({ min: -10, max: weeks * 7 + 10 }).map(day),
    renewedFor: fc.integer({ min: 5, max: weeks * 7 }),
    effect: fc.constantFrom<("grounds" | "limits" | "notes")[]>("grounds", "grounds", "limits", "notes"),
    parts: fc.constantFrom<{ part: string; count: number }[]>([], [], [{ part: "seal", count: 1 }]),
  });
}

function people(weeks: number) {
  const absent = fc
    .tuple(fc.integer({ min: 0, max: weeks * 7 }), fc.integer({ min: 0, max: 9 }))
    .map(([from, length]) => ({ from: day(from), to: day(from + length) }));
  const sees = fc.constantFrom<string[]>([], [], ["fuel"], ["run", "fuel"]);
  return fc
    .record({
      sees,
      lone: fc.boolean(),
      ann: fc.record({ hoursPerWeek: fc.integer({ min: 1, max: 4 }), absent: fc.array(absent, { maxLength: 1 }) }),
      ben: fc.record({ hoursPerWeek: fc.integer({ min: 0, max: 3 }), absent: fc.array(absent, { maxLength: 1 }) }),
    })
    .map(({ ann, ben, sees: seen, lone }) => [
      { id: "ann", may: lone ? ["run"] : ["run", "fuel"], sees: seen, ...ann },
      { id: "ben", may: lone ? ["fuel"] : ["run"], sees: lone ? seen : [], ...ben },
    ]);
}
