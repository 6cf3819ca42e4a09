import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPattern } from "#kit";
import { instantOf, validateEntry } from "#log";
import { daysBetween } from "#base";
import { holdersOf, isForCasualty, judgeBody, openOrders, orderList, practiceOf, stockOf } from "#readiness";
import { boardOf, checkChances, createStationFold, drillsOf, visitResult } from "#station";
import { ENGLISH, inWords } from "#words";
import { demoAccounts, demoEntries } from "./index.ts";

const folder = join(import.meta.dirname, "..", "..", "patterns");
const patterns = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => loadPattern(readFileSync(join(folder, name), "utf8"), name));
const today = "2027-03-14";
const setting = { patterns, today, seed: 7, expected: () => 0.006 };
const entries = demoEntries(setting);
const fold = createStationFold(patterns);
fold.add(entries);
const board = boardOf(fold.read(), `${today}T12:00:00Z`);
const kits = new Map(board.places.flatMap((place) => place.kits).map((one) => [one.kit.name, one]));
const primes = (name: string): number[] => kits.get(name)!.kit.runs.flatMap(({ primeSeconds }) => primeSeconds ?? []);
const first = (name: string): string => inWords(kits.get(name)!.standing.because[0]!.said, ENGLISH.standing);

describe("the demo station", () => {
  it("is three places, thirteen kits, six people and two years of log", () => {
    expect(board.places.map(({ place }) => place.name)).toEqual(["All-weather boat", "Boathouse", "Outer pier store"]);
    expect(kits.size).toBe(13);
    expect(fold.read().people.map(({ name }) => name)).toHaveLength(demoAccounts().length);
    const years = (instantOf(entries.at(-1)!.at) - instantOf(entries[0]!.at)) / (365.25 * 86_400_000);
    expect(years).toBeGreaterThan(2);
  });

  it("is made of entries that the log and the readiness rooms accept", () => {
    expect(entries.map((entry) => validateEntry(entry)).flatMap(judgeBody)).toEqual([]);
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
  });

  it("with a shorter past of its kits is a third of the log, and its kits stand as they do with the whole", () => {
    const short = demoEntries({ ...setting, kitDays: 240 });
    expect(short.length).toBeLessThan(0.4 * entries.length);
    const folded = createStationFold(patterns);
    folded.add(short);
    const holding = (station: Parameters<typeof practiceOf>[0]) =>
      ["proof-run", "spare-cord", "fuel-handling", "sealing"].map((id) =>
        practiceOf(station)
          .holders(id, today)
          .map(({ name }) => name),
      );
    const standings = (one: typeof board) =>
      one.places.flatMap((place) => place.kits.map(({ kit, standing }) => `${kit.name} ${standing.standing}`));
    expect(standings(boardOf(folded.read(), `${today}T12:00:00Z`))).toEqual(standings(board));
    expect(holding(folded.read())).toEqual(holding(fold.read()));
  });

  it("is the same for the same seed, another for another, and never reaches into today", () => {
    expect(demoEntries(setting)).toEqual(entries);
    expect(demoEntries({ ...setting, seed: 8 })).not.toEqual(entries);
    expect(entries.filter(({ at }) => instantOf(at) >= Date.parse(`${today}T00:00:00Z`))).toEqual([]);
  });

  it("tells of one past drill: three planted, two found, one missed, one that was not there", () => {
    const { on, over } = drillsOf(fold.read());
    expect(on).toEqual([]);
    expect(over).toHaveLength(1);
    const [{ drill, kit, comparison }] = over as [(typeof over)[0]];
    expect(drill.ended?.how).toBe("compared");
    expect(comparison.faults.map(({ found, removed }) => [found !== undefined, removed !== undefined])).toEqual(
      expect.arrayContaining([
        [true, true],
        [true, true],
        [false, true],
      ]),
    );
    expect(comparison.wrong).toHaveLength(1);
    expect(comparison.unjudged).toEqual([]);
    expect(kits.get(kit.name)!.standing.standing).toBe("ready");
    const chances = checkChances(fold.read());
    expect(chances.some(({ found, planted }) => found < planted)).toBe(true);
  });

  it("tells of one past visit: drawn by its seed, two lines missed by the keeper, both put right since", () => {
    const reading = fold.read();
    const [visit, ...others] = reading.visits;
    expect(others).toEqual([]);
    const result = visitResult(visit!, reading);
    expect(result.drawnAgain).toBe("same");
    expect(result.missed).toHaveLength(2);
    expect(result.missed.every(({ finding }) => finding?.effect === "notes" && finding.closed)).toBe(true);
    expect(result.agreed).toMatchObject({ count: result.lines.length - 2, of: result.lines.length });
    expect(result.kits.map(({ isNotTurnedRound }) => isNotTurnedRound)).toEqual([false]);
  });

  it("writes the diesel kit last: the other twelve are the same with it and without", () => {
    const without = demoEntries({
      ...setting,
      patterns: patterns.filter(({ engine }) => engine?.fuelKind !== "diesel"),
    });
    const kitLines = (all: typeof entries) => all.filter(({ subject }) => subject.startsWith("kit:"));
    const [own, others] = [kitLines(entries).filter(({ subject }) => subject === "kit:br-13"), kitLines(without)];
    expect(kitLines(entries).filter(({ subject }) => subject !== "kit:br-13")).toEqual(others);
    expect(own.length).toBeGreaterThan(200);
  });

  it("has a diesel kit that is ready, hung its hose overnight, and whose hose tags agree", () => {
    const { kit, standing } = kits.get("Pump 13")!;
    expect(standing.standing).toBe("ready");
    const hung = kit.turnarounds.map(({ timers }) => timers["hang-hoses"]?.seconds ?? 0);
    expect(Math.min(...hung)).toBeGreaterThanOrEqual(12 * 3600);
    const tags = kit.turnarounds.flatMap(({ answers }) => answers["discharge-step/discharge-tag"]?.value ?? []);
    expect(new Set(tags.map((tag) => tag.kind === "match" && tag.first))).toEqual(new Set(["BR-13-D1"]));
  });

  it("takes no notice of earlier versions of its patterns", () => {
    const earlier = patterns.map((pattern) => ({ ...pattern, version: pattern.version - 1 }));
    expect(demoEntries({ ...setting, patterns: [...earlier, ...patterns] })).toEqual(entries);
  });

  it("reads a gauge in quarters, and never as the mark of a kit", () => {
    const read = entries.flatMap(({ body }) => {
      const { check, value } = body as { check?: string; value?: { first?: string } };
      return check === "gauge-match" && value?.first !== undefined ? [value.first] : [];
    });
    expect(new Set(read)).toEqual(new Set(["4/4"]));
  });

  it("has a casualty whose pump is the kit that was handed over to her, by a name typed in full", () => {
    const casualty = fold.read().casualties[0]!;
    const kit = fold.kit(casualty.pumps[0]!.kit!)!;
    expect(kit.custody).toMatchObject({ kind: "away", to: "Fishing vessel Corrie Lass, off the north skerries" });
    expect(kit.custody.kind === "away" && isForCasualty(casualty, kit.custody)).toBe(true);
  });

  it("has believable troubles, each with its reason", () => {
    expect(kits.get("Pump 1")!.standing.standing).toBe("ready");
    expect(kits.get("Pump 3")!.standing.standing).toBe("ready-with-limits");
    expect(first("Pump 3")).toMatch(/^Lived with until 14 May 2027 by Mara Tolliver/);
    expect(first("Pump 4")).toMatch(/^Seal seen BR \d+, recorded BR \d+/);
    expect(kits.get("Pump 5")!.standing.standing).toBe("open");
    expect(first("Pump 8")).toMatch(/out of date since/);
    expect(kits.get("Pump 11")!.standing.standing).toBe("away");
    expect(kits.get("Pump 12")!.standing.standing).toBe("grounded");
    expect(kits.get("Pump 7")!.standing.lapse?.day).toBe("2027-03-20");
  });

  it("has a prime that gets slower over the years and one that does not", () => {
    expect(primes("Pump 2").at(-1)! - primes("Pump 2")[0]!).toBeGreaterThan(20);
    expect(Math.abs(primes("Pump 1").at(-1)! - primes("Pump 1")[0]!)).toBeLessThan(12);
  });

  it("tells of the casualty that the away kit is aboard of, closed with its soundings", () => {
    const [casualty] = fold.read().casualties;
    expect(casualty?.name).toBe("Corrie Lass");
    expect(casualty?.closed?.outcome).toBe("towed-in");
    expect(first("Pump 11")).toContain(casualty!.name);
  });

  it("has a store of two years: a shelf below what is kept, a lot recalled and an item taken for another kit", () => {
    const { parts, kits: all } = fold.read();
    const stock = stockOf(parts, all);
    const starter = parts.find(({ id }) => id === "recoil-starter")!;
    const [recall] = starter.recalls;
    const held = holdersOf({ part: starter, lot: recall!.lot, kits: all, stock });
    expect(held.kits.map(({ kit, finding }) => [kit.name, finding?.effect])).toEqual([["Pump 12", "notes"]]);
    expect(kits.get("Pump 12")!.kit.robbed).toMatchObject([{ to: "br-05" }]);
    const asked = { ...fold.read(), stock, today, days: 182 };
    expect(orderList(asked).map(({ part }) => part.id)).toContain("desiccant");
    expect(openOrders(parts).map(({ part }) => part.id)).toEqual(["coupling-gasket"]);
    expect(parts.every(({ items }) => items.length > 0)).toBe(true);
  });

  it("has people who hold what they did, one who lacks the sealing, and one whose drill lapses within a month", () => {
    const station = fold.read();
    const book = practiceOf(station);
    const holders = (id: string) => book.holders(id, today).map(({ name }) => name);
    for (const id of ["proof-run", "spare-cord", "fuel-handling"]) {
      expect(holders(id), id).toEqual(["Ede Sorrell", "Jonas Wick", "Mara Tolliver"]);
    }
    expect(holders("sealing")).toEqual(["Jonas Wick", "Mara Tolliver"]);
    expect(daysBetween(today, book.holding("spare-cord", "jonas-wick")!.until)).toBeLessThan(31);
    const hers = book.doings.filter(({ person, in: where }) => person === "ede-sorrell" && where.kind === "turnaround");
    expect(hers[0]).toMatchObject({ counts: "seen", second: "mara-tolliver" });
    expect(hers.filter(({ counts }) => counts === "held").length).toBeGreaterThan(5);
    expect(book.doings.filter(({ counts }) => counts === undefined).map(({ person }) => person)).toContain(
      "ede-sorrell",
    );
  });

  it("leaves no sound kit with something out of date", () => {
    for (const name of ["Pump 1", "Pump 2", "Pump 6", "Pump 9", "Pump 10"]) {
      expect(
        `${name}: ${kits
          .get(name)!
          .standing.because.map(({ said }) => inWords(said, ENGLISH.standing))
          .join(" ")}`,
      ).not.toMatch(/out of date|due/);
    }
  });
});
