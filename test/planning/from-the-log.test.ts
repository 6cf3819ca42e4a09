import { addDays } from "#base";
import { demoEntries } from "#demo";
import { planYear } from "#planning";
import { onShelf, stockOf } from "#readiness";
import {
  createStationFold,
  fixedWeeks,
  openingProposal,
  planInputOf,
  wallOf,
  workDueOf,
  type StationReading,
} from "#station";
import { beforeAll, describe, expect, it } from "vitest";
import type { StationView } from "../../src/web/device/index.ts";
import { shelfCount } from "../../src/web/kit-view/stock-view.ts";
import { judgeYear } from "../judges/year-plan/judge.ts";
import { SHIPPED_FILES, shippedPattern } from "../patterns/shipped-patterns.ts";

/* A whole station as its log tells it: work due, wall, and the question of its year, judged by who knows none of them. */

const TODAY = "2027-03-15";
const NOW = `${TODAY}T10:00:00Z`;
let reading: StationReading;

beforeAll(() => {
  const patterns = SHIPPED_FILES.map((name) => shippedPattern(name.replace(".yaml", "")));
  const fold = createStationFold(patterns);
  fold.add(demoEntries({ patterns, today: TODAY, seed: 3 }));
  reading = fold.read();
});

describe("a station's year from its own log", () => {
  it("is planned, and the independent judge finds nothing against the plan", () => {
    const { input, assumed } = planInputOf(reading, { today: TODAY, weeks: 52, fixed: [] });
    expect(input.start).toBe(TODAY);
    expect(input.kits.map(({ id }) => id)).not.toContain("br-11");
    expect(assumed.join(" ")).toContain("Pump 11");
    const plan = planYear(input, { seconds: 0 });
    expect(judgeYear(input, plan).complaints).toEqual([]);
    expect(plan.openings.length).toBeLessThanOrEqual(plan.naive.openings);
    expect(plan.openings.length).toBeGreaterThanOrEqual(input.kits.length);
  });

  it("is asked for no more openings on the strength of two clean ones, whatever a failure weighs", () => {
    const pattern = reading.patterns.get("ossel-200@2")!;
    const verdicts = [1000, 100_000, 10_000_000].map(
      (nightHours) => openingProposal(pattern, reading, { now: NOW, nightHours, policy: reading.policy })?.verdict.kind,
    );
    expect(verdicts).toEqual(["cannot-tell", "cannot-tell", "cannot-tell"]);
  });

  it("goes round weeks that a person fixed, and leaves out what is fixed outside of it", () => {
    const fixed = [
      { kit: "br-01", week: 9 },
      { kit: "br-01", week: -2 },
      { kit: "gone", week: 3 },
    ];
    const { input } = planInputOf(reading, { today: TODAY, weeks: 52, fixed });
    expect(input.fixed).toEqual([{ kit: "br-01", week: 9 }]);
    expect(planYear(input, { seconds: 0 }).openings).toContainEqual(expect.objectContaining({ kit: "br-01", week: 9 }));
  });

  it("RULE-18 asks nobody for what they may not do alone, save where somebody there may see it done", () => {
    const { input, assumed } = planInputOf(reading, { today: TODAY, weeks: 52, fixed: [] });
    expect(assumed).toContain("Asked only where somebody there may see it done, not alone: Ede Sorrell, Ines Dunmore.");
    const ede = input.people.find(({ id }) => id === "ede-sorrell")!;
    expect(ede.may).toEqual(["fuel-handling", "proof-run", "spare-cord"]);
    const plan = planYear(input, { seconds: 0 });
    expect(plan.openings.flatMap((one) => one.by)).toContain("mara-tolliver");
    for (const { by, beside = [] } of plan.openings) {
      const named = [...by, ...beside];
      if (by.includes("ede-sorrell") || by.includes("ines-dunmore"))
        expect(named.includes("mara-tolliver") || named.includes("jonas-wick")).toBe(true);
    }
    expect(judgeYear(input, plan).complaints).toEqual([]);
  });

  it("RULE-18 names as many as lift at once in the plan as in work due, and how many are lacking", () => {
    const lone = {
      ...reading,
      people: reading.people.filter(({ id }) => id === "mara-tolliver" || id === "jonas-wick"),
    };
    const { input } = planInputOf(lone, { today: TODAY, weeks: 52, fixed: [] });
    const due = workDueOf(lone, NOW).filter(({ work, people }) => work === "opening" && people > 2);
    expect(due.length).toBeGreaterThan(0);
    expect(due.every(({ people, lacking }) => lacking === people - 2)).toBe(true);
    const plan = planYear(input, { seconds: 0 });
    for (const { kit, by, beside = [], lacking = 0 } of plan.openings) {
      const { hands } = input.kits.find(({ id }) => id === kit)!;
      expect([by.length + beside.length, lacking]).toEqual([
        Math.min(2, Math.max(hands, by.length)),
        Math.max(0, hands - 2),
      ]);
    }
  });

  it("goes round a day that was given and a flush that is due", () => {
    const kits = reading.kits.map((kit) => {
      const mark = { at: NOW, by: "mara-tolliver", entry: "e", device: "d" };
      if (kit.id === "br-02")
        return { ...kit, work: { opening: { takers: [], day: { ...mark, day: "2027-04-01" } } } } as typeof kit;
      if (kit.id === "br-03") return { ...kit, met: [{ ...mark, what: ["salt"] }] } as unknown as typeof kit;
      if (kit.id !== "br-01") return kit;
      const openings = [4, 9, 20].map((week, at) => ({
        id: `o${at}`,
        week: addDays(TODAY, 7 * week),
        renews: [],
        by: [],
        ...(week === 9 && { fixed: true as const }),
      }));
      return { ...kit, planned: { ...mark, openings } } as typeof kit;
    });
    const station = { ...reading, kits };
    const fixed = fixedWeeks(station, { today: TODAY, weeks: 52 });
    expect(fixed.filter(({ kit }) => kit === "br-01" || kit === "br-02")).toEqual([
      { kit: "br-01", week: 9, instead: { from: 5, to: 19 } },
      { kit: "br-02", week: 2, instead: { from: 0, to: 2 } },
    ]);
    const wet = workDueOf(station, NOW).filter(({ flush }) => flush !== undefined);
    expect(wet.map(({ kit }) => kit.id)).toContain("br-03");
    for (const { kit } of wet) expect(fixed).toContainEqual({ kit: kit.id, week: 0, instead: { from: 0, to: 0 } });
    const { input } = planInputOf(station, { today: TODAY, weeks: 52, fixed });
    const plan = planYear(input, { seconds: 0 });
    expect(judgeYear(input, plan).complaints).toEqual([]);
    expect(plan.openings.find(({ kit }) => kit === "br-02")!.week).toBe(2);
  });

  it("asks nobody for what nobody holds, and says so", () => {
    const since = { ...reading.qualifications[0]!.since, at: "2020-01-01T00:00:00Z" };
    const set = reading.qualifications.map((one) => ({ ...one, since, seenBy: "holders" as const }));
    const people = reading.people.map(({ told: _told, ...person }) => person);
    const unheld = { ...reading, people, qualifications: set };
    const { input, assumed } = planInputOf(unheld, { today: TODAY, weeks: 52, fixed: [] });
    expect(input.kits.every(({ needs }) => needs === undefined)).toBe(true);
    expect(assumed.join(" ")).toContain("Nobody holds it today or may see it done, so the plan asks nobody for it:");
    expect(planYear(input, { seconds: 0 }).openings.length).toBeGreaterThanOrEqual(input.kits.length);
  });

  it("RULE-18 tells who may do an opening alone, and who with a second person", () => {
    const opening = workDueOf(reading, NOW).find(({ work }) => work === "opening")!;
    expect(opening.present.map(({ id }) => id)).toEqual(["jonas-wick", "mara-tolliver"]);
    expect(opening.withSecond.map(({ id }) => id)).toEqual(["ede-sorrell", "ines-dunmore"]);
    const lone = reading.people.filter(({ id }) => id === "ede-sorrell" || id === "hal-brandreth");
    const [line] = workDueOf({ ...reading, people: lone }, NOW).filter(({ work }) => work === "opening");
    expect([line!.present, line!.withSecond]).toEqual([[], []]);
  });

  it.each([
    ["2027-03-15", TODAY],
    ["2027-03-20", TODAY],
    ["2027-03-21", "2027-03-22"],
  ])("on %s it plans from the Monday of %s: a Sunday has nothing left of its week", (today, start) => {
    expect(planInputOf(reading, { today, weeks: 52, fixed: [] }).input.start).toBe(start);
  });

  it("shows one line for each opening, and every line of a kit that is there", () => {
    const lines = workDueOf(reading, NOW);
    const openings = lines.filter(({ work }) => work === "opening").map(({ kit }) => kit.id);
    expect(new Set(openings).size).toBe(openings.length);
    expect(lines.find(({ kit }) => kit.id === "br-11")).toMatchObject({ work: "return" });
    expect(lines.find(({ kit }) => kit.id === "br-07")!.said.takers).toMatchObject([{ person: "jonas-wick" }]);
    const away = workDueOf(reading, "2027-03-26T10:00:00Z").flatMap(({ present }) => present.map(({ id }) => id));
    expect(away).toContain("jonas-wick");
    expect(away).not.toContain("ede-sorrell");
  });

  it("joins what lies on the shelf where that is known", () => {
    const [line] = workDueOf(reading, NOW, ({ item }, kit) =>
      kit.place === "boathouse" ? item.length : undefined,
    ).filter(({ place, parts }) => place.id === "boathouse" && parts.length > 0);
    expect(line!.parts.every(({ item, onShelf }) => onShelf === item.length)).toBe(true);
  });

  it("says of a part how many lie on its place's own shelf, and nothing where an item has no part", () => {
    const view = { ...reading, today: TODAY, retired: [] } as unknown as StationView;
    const lines = workDueOf(reading, NOW, shelfCount(view));
    const needs = lines.flatMap(({ kit, parts }) => parts.map((part) => ({ kit, part })));
    const stock = stockOf(reading.parts, reading.kits);
    const fits = (kit: string, item: string) =>
      reading.parts.find(({ items }) => items.some((one) => kit.startsWith(`${one.pattern}@`) && one.item === item));
    for (const { kit, part } of needs) {
      const of = fits(kit.pattern, part.item);
      const [there] = of ? onShelf(stock, kit.place, [of.id], TODAY) : [];
      expect(part.onShelf).toBe(there?.usable);
    }
    expect(new Set(needs.map(({ part }) => part.onShelf === undefined))).toEqual(new Set([true, false]));
  });

  it("puts kits on the wall ready first, then with limits, the one sealed last first", () => {
    const wall = wallOf(reading, "boathouse", NOW)!;
    const sealed = (name: string) => reading.kits.find((kit) => kit.name === name)!.seal!.at;
    const ready = wall.kits.filter(({ standing }) => standing === "ready").map(({ name }) => sealed(name));
    expect(wall.kits.map(({ standing }) => standing).toSorted()).toEqual(wall.kits.map(({ standing }) => standing));
    expect(ready.toSorted().toReversed()).toEqual(ready);
    expect(wall.work.every(({ bucket }) => bucket !== "month")).toBe(true);
    expect(JSON.stringify(wall)).not.toContain("Outer pier");
    expect(wallOf(reading, "nowhere", NOW)).toBeUndefined();
  });
});

/** The year's question with so many months accepted for a pattern. */
function withOpenings(months: number, pattern = "brinnet-450") {
  const policy = { ...reading.policy, openings: { [pattern]: { months } } };
  return planInputOf({ ...reading, policy }, { today: TODAY, weeks: 52, fixed: [] });
}

function acceptedOf(kit: string, { input }: ReturnType<typeof withOpenings>) {
  return input.kits.find(({ id }) => id === kit)!.clocks.filter(({ id }) => id === "Opening as accepted");
}

describe("how often to open, as it was accepted", () => {
  it("is a clock of its kits that the plan keeps in date, and that grounds nothing", () => {
    const asked = withOpenings(3);
    const [clock] = acceptedOf("br-01", asked);
    expect(clock).toMatchObject({ effect: "notes" });
    expect(clock!.renewedFor).toBeGreaterThan(88);
    expect(clock!.renewedFor).toBeLessThan(94);
    expect(acceptedOf("br-01", withOpenings(3, "ossel-200"))).toEqual([]);
    const { openings } = planYear(asked.input, { seconds: 0 });
    const own = openings.filter(({ kit }) => kit === "br-01").map(({ week }) => week);
    expect(own.length).toBeGreaterThanOrEqual(4);
    for (const [i, week] of own.entries()) if (i > 0) expect(week - own[i - 1]!).toBeLessThanOrEqual(13);
  });

  it("is due at once for a kit that was never sealed here, and comes round as for the others", () => {
    const kits = reading.kits.map((kit) => (kit.id === "br-01" ? { ...kit, turnarounds: [] } : kit));
    const policy = { ...reading.policy, openings: { "brinnet-450": { months: 3 } } };
    const { input } = planInputOf({ ...reading, kits, policy }, { today: TODAY, weeks: 52, fixed: [] });
    const [clock] = input.kits
      .find(({ id }) => id === "br-01")!
      .clocks.filter(({ id }) => id === "Opening as accepted");
    expect(clock).toMatchObject({ lastGoodDay: "2027-03-14", renewedFor: 92 });
    const own = planYear(input, { seconds: 0 }).openings.filter(({ kit }) => kit === "br-01");
    expect(own.length).toBeGreaterThanOrEqual(4);
  });

  it("is never longer than the manual's: then the manual's own clock stands alone", () => {
    expect(acceptedOf("br-01", withOpenings(24))).toEqual([]);
  });
});
