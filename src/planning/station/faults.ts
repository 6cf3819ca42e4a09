import { formatDate, printGiven, weekdayOf, type Fault } from "#base";
import { gridOf } from "./grid.ts";
import type { YearStation } from "./station.ts";
import { canShare, workOf } from "./work-sharing.ts";
import { sayWeeks } from "./say-weeks.ts";

/**
 * Everything that does not fit together in a station whose fields are each of the right kind.
 * @returns PL-101 a start that is no Monday, PL-102 to PL-105 names that nothing has, PL-106 a fixed week outside,
 *   PL-107 a name twice, PL-108 an absence that ends before it begins, PL-109 a fixed opening that nobody can do,
 *   PL-110 a fixed opening twice
 */
export function stationFaults(station: YearStation): readonly Fault[] {
  const found = [
    ...startFaults(station),
    ...namedTwice(station),
    ...unknownNames(station),
    ...absenceFaults(station),
    ...fixedFaults(station),
  ];
  return found.length > 0 ? found : undoable(station);
}

function startFaults({ start }: YearStation): Fault[] {
  if (weekdayOf(start) === 1) return [];
  const remedy = "Give the Monday of the first week.";
  return [{ code: "PL-101", field: "start", got: `${start} (${formatDate(start)})`, allowed: "a Monday", remedy }];
}

function namedTwice({ places, kits, people, parts = [] }: YearStation): Fault[] {
  const lists: readonly (readonly [string, readonly { readonly id: string }[]])[] = [
    ["places", places],
    ["kits", kits],
    ["people", people],
    ["parts", parts],
    ...kits.map((kit, index) => [`kits[${index}].clocks`, kit.clocks] as const),
  ];
  return lists.flatMap(([name, list]) =>
    list.flatMap(({ id }, index) => {
      if (list.findIndex((one) => one.id === id) === index) return [];
      const remedy = "Give each a name of its own.";
      return [
        { code: "PL-107", field: `${name}[${index}].id`, got: printGiven(id), allowed: "a name used once", remedy },
      ];
    }),
  );
}

function unknownNames({ places, kits, people, parts = [], fixed = [] }: YearStation): Fault[] {
  const placeNames = places.map((one) => one.id);
  const may = [...new Set(people.flatMap(({ may: own = [], sees = [] }) => [...own, ...sees]))];
  const partNames = parts.map((one) => one.id);
  const kitNames = kits.map((one) => one.id);
  return [
    ...kits.flatMap((kit, at) => [
      ...unknown("PL-102", `kits[${at}].place`, kit.place, placeNames, "a place"),
      ...(kit.needs ?? []).flatMap((need, index) =>
        unknown(
          "PL-103",
          `kits[${at}].needs[${index}]`,
          need,
          may,
          "a qualification that somebody has or may see done",
        ),
      ),
      ...kit.clocks.flatMap((clock, index) =>
        (clock.parts ?? []).flatMap(({ part }, one) =>
          unknown("PL-104", `kits[${at}].clocks[${index}].parts[${one}].part`, part, partNames, "a part"),
        ),
      ),
    ]),
    ...fixed.flatMap(({ kit }, at) => unknown("PL-105", `fixed[${at}].kit`, kit, kitNames, "a kit")),
  ];
}

function unknown(code: string, field: string, got: string, known: readonly string[], what: string): Fault[] {
  if (known.includes(got)) return [];
  const names = known.length > 0 ? known.slice(0, 20).join(", ") : "none is given";
  return [{ code, field, got: printGiven(got), allowed: `${what}: ${names}`, remedy: "Correct the name, or add it." }];
}

function absenceFaults({ people }: YearStation): Fault[] {
  return people.flatMap((person, at) =>
    (person.absent ?? []).flatMap(({ from, to }, index) => {
      if (from <= to) return [];
      const remedy = "Give first the first day away, then the last.";
      return [
        { code: "PL-108", field: `people[${at}].absent[${index}].to`, got: to, allowed: `${from} or later`, remedy },
      ];
    }),
  );
}

function fixedFaults({ fixed = [], weeks, start }: YearStation): Fault[] {
  return fixed.flatMap(({ kit, week }, at) => {
    const got = String(week);
    if (week < 0 || week >= weeks) {
      const remedy = "Fix an opening in a week that is planned.";
      return [{ code: "PL-106", field: `fixed[${at}].week`, got, allowed: `0 to ${weeks - 1}`, remedy }];
    }
    if (fixed.findIndex((one) => one.kit === kit && one.week === week) === at) return [];
    return [
      {
        code: "PL-110",
        field: `fixed[${at}]`,
        got: `${kit} in ${sayWeeks(start, [week])}`,
        allowed: "each once",
        remedy: "Leave one out.",
      },
    ];
  });
}

/** Fixed openings for which the hours of those who may do them are not enough. */
function undoable(station: YearStation): Fault[] {
  const grid = gridOf(station);
  const fixed = station.fixed ?? [];
  return fixed.flatMap(({ week }, at) => {
    if (fixed.findIndex((one) => one.week === week) !== at) return [];
    const work = grid.kits.filter((kit) => kit.fixed.includes(week));
    if (
      canShare(
        grid,
        week,
        work.map((kit) => workOf(kit, week)),
      )
    )
      return [];
    const minutes = work.reduce((sum, kit) => sum + kit.minutes, 0);
    const got = `${minutes} min of work in ${sayWeeks(station.start, [week])}`;
    const allowed = "what the people there that week may do within their hours";
    return [
      { code: "PL-109", field: `fixed[${at}]`, got, allowed, remedy: "Fix it in another week, or give more hours." },
    ];
  });
}
