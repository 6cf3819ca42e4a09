import { fetchWords } from "#words";
import type { KitsNeededAnswer } from "#questions";
import { ask } from "#questions";
import { describe, expect, it } from "vitest";
import { kitsQuestion, openingOf, tell } from "./before-launch.ts";

const WORDS = { told: await fetchWords("en", "casualtyTold"), launch: await fetchWords("en", "launchTold") };
const CALL = { kind: "motor boat", length: 9, distance: 9260 } as const;
const WAY = { speed: 10, launch: 600, setUp: 600, carries: 6 };
const NOW = Date.parse("2026-03-14T13:02:00Z");

function answerTo(call: object, way = WAY): KitsNeededAnswer {
  return ask(
    "kits-needed",
    JSON.parse(JSON.stringify(kitsQuestion({ ...CALL, ...call }, NOW, way))),
  ) as KitsNeededAnswer;
}

describe("before launch", () => {
  it("asks nothing until the distance is told, and then answers with the rest unknown, and says so", () => {
    expect(kitsQuestion({ kind: "motor boat", length: 9 }, NOW, WAY)).toBeUndefined();
    expect(answerTo({}).byKits).toHaveLength(6);
    const whats = answerTo({ kind: undefined, length: undefined })
      .assumptions.map(({ what }) => what)
      .join(" ");
    expect(whats).toContain("Kind of boat not known");
    expect(whats).toContain("Length not known");
    expect(whats).toContain("not taken for dry");
  });

  it("counts the time to launch, and hides no speed: every minute of both is in the arrival", () => {
    expect(answerTo({}).arrival).toBe(600 + 926 + 600);
    expect(answerTo({}, { ...WAY, launch: 1500, speed: 5 }).arrival).toBe(1500 + 1852 + 600);
    expect(
      answerTo({})
        .assumptions.map(({ what }) => what)
        .join(" "),
    ).not.toMatch(/20 kn|10 min|Under way/);
  });

  it("takes two levels told minutes apart for a rise, and one told again at once for a slip", () => {
    const first = tell(CALL, { water: 0.3 }, NOW - 600_000);
    const slip = tell(first, { water: 0.4 }, NOW - 590_000);
    expect(slip.tellings).toEqual([{ at: NOW - 590_000, water: 0.4 }]);
    const two = tell(first, { water: 0.6 }, NOW);
    expect(kitsQuestion(two, NOW, WAY)).toMatchObject({
      tellings: [
        { ago: 600, water: 0.3 },
        { ago: 0, water: 0.6 },
      ],
    });
    expect(answerTo(two).inflow.p05).toBeGreaterThan(answerTo({}).inflow.p50);
    expect(tell(two, {}, NOW, true).tellings).toEqual([]);
  });

  it("takes a level that falls for evidence, and writes it in words: a rise on a sheet is never below none", () => {
    const falls = tell(CALL, { rising: -0.03 / 120 }, NOW);
    expect(answerTo(falls).inflow.p95).toBeLessThan(answerTo({}).inflow.p95);
    const opening = openingOf(falls, "Grey boat", WORDS);
    expect(opening).not.toHaveProperty("told");
    expect(opening.note).toBe("Told: the level falls, 3\u00a0cm in 2 min (1.2\u00a0in in 2 min), at 13:02 UTC.");
  });

  it("opens a sheet with what was told and a space such a boat floods in", () => {
    expect(openingOf({ ...CALL, hole: 0.04 }, " Grey boat ", WORDS)).toEqual({
      name: "Grey boat",
      boat: { kind: "motor boat", length: 9 },
      space: { id: "space-1", name: "Engine room", sort: "engine-room", part: "aft" },
      hole: { diameter: 0.04 },
    });
  });

  it("says on the sheet what stands in for a kind and a length that nobody knows", () => {
    const opening = openingOf({ distance: 1 }, "Grey boat", WORDS);
    expect(opening.boat).toEqual({ kind: "motor boat", length: 10 });
    expect(opening.note).toMatch(
      /^Kind not known when opened.*Length not known when opened: 10\sm \(3[23](\.\d)?\sft\)/,
    );
  });

  it("hands water told, and when, position and other stations' kits on to the sheet", () => {
    const first = tell(CALL, { water: 0.3 }, NOW - 600_000);
    const told = tell(tell(first, { water: 0.5 }, NOW), { hole: 0.04, position: " 57 12 N ", drift: "" }, NOW + 60_000);
    const opening = openingOf(told, "Grey boat", WORDS);
    expect(opening.told).toEqual({ at: "2026-03-14T13:02:00.000Z", water: 0.5 });
    expect(opening.situation).toEqual({ position: "57 12 N" });
    expect(opening.note).toBe("Told before: 30\u00a0cm (11.8\u00a0in) at 12:52 UTC.");
    expect(openingOf(tell(told, {}, NOW, true), "Grey boat", WORDS)).not.toHaveProperty("told");
  });
});
