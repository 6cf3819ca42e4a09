import { ask } from "../ask.ts";
import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import {
  instantOn,
  lastKnownQuestion,
  nextSoundingQuestion,
  sheetQuestion,
  secondsOn,
  spaceAt,
} from "./sheet-question.ts";

const mark = (minute: number) => ({
  entry: `e${minute}`,
  at: `2027-03-14T10:${String(minute).padStart(2, "0")}:00Z`,
  by: "ann",
  device: "d",
});
const CABIN = { id: "s1", name: "Cabin", sort: "cabin", part: "middle" } as const;
const HOLD = { id: "s2", name: "Hold", sort: "hold", part: "forward" } as const;
const SHEET: CasualtyState = {
  id: "c1",
  name: "Grey boat",
  boat: { kind: "motor boat", length: 9 },
  spaces: [CABIN, HOLD],
  opened: mark(0),
  soundings: [
    { ...mark(1), space: "s1", level: 0.3, text: "30 cm" },
    { ...mark(2), space: "s2", level: 0.1, text: "10 cm" },
    { ...mark(6), space: "s1", level: 0.35, text: "35 cm" },
  ],
  pumps: [
    {
      pump: "p1",
      name: "Pump 1",
      space: "s1",
      running: true,
      flow: 0.003,
      runs: [{ from: mark(5).at, space: "s1", flow: 0.003 }],
    },
  ],
  patches: [],
  stability: {},
  notes: [],
};
const NOW = Date.parse("2027-03-14T10:07:00Z");

describe("a sheet as a question", () => {
  it("looks at the space sounded last unless another is chosen", () => {
    expect(spaceAt(SHEET)).toBe(CABIN);
    expect(spaceAt(SHEET, "s2")).toBe(HOLD);
    expect(spaceAt({ ...SHEET, spaces: [] })).toBeUndefined();
  });

  it("carries the readings and pumping of that space, and the last level of the others", () => {
    const question = sheetQuestion(SHEET, NOW)!;
    expect(question.readings).toEqual([
      { at: 60, level: 0.3 },
      { at: 360, level: 0.35 },
    ]);
    expect(question.pumping).toEqual([{ from: 300, flow: 0.003, pump: "p1", name: "Pump 1" }]);
    expect(question.spaces[1]).toMatchObject({
      name: "Hold",
      level: 0.1,
      readings: [{ at: 120, level: 0.1 }],
      pumping: [],
    });
    expect(sheetQuestion(SHEET, NOW, "s2")!.pumping).toEqual([]);
  });

  it("carries which pump ran how, what was seen of it in this space, and what was seen of her", () => {
    const [pump] = SHEET.pumps;
    const run = { ...pump!.runs[0]!, lift: -1, throttle: 1.1 };
    const elsewhere = { ...pump!, pump: "p2", space: "s2", runs: [] };
    const sheet = {
      ...SHEET,
      pumps: [{ ...pump!, runs: [run, { ...run, from: mark(6).at, lift: 2, throttle: 0.7 }] }, elsewhere],
      pumpSeen: [
        { ...mark(6), pump: "p1", sign: "weak" },
        { ...mark(6), pump: "p2", sign: "no-water" },
      ],
      stability: { trim: 0.3, list: 0.1, deckEdge: "awash", overSill: true, leaving: true },
    } as const satisfies CasualtyState;
    const { pumping, pumpSeen, spaces, trimSeen, ...rest } = sheetQuestion(sheet, NOW)!;
    expect(pumping).toEqual([
      { from: 300, flow: 0.003, pump: "p1", name: "Pump 1", throttle: 1 },
      { from: 360, flow: 0.003, pump: "p1", name: "Pump 1", lift: 2, throttle: 0.7 },
    ]);
    expect(pumpSeen).toEqual([{ at: 360, pump: "p1", sign: "weak" }]);
    expect(spaces[1]!.pumpSeen).toEqual([{ at: 360, pump: "p2", sign: "no-water" }]);
    expect(trimSeen).toBeCloseTo(-Math.atan(0.3 / 9), 12);
    expect(rest).toMatchObject({ list: 0.1, deckEdge: "awash", overSill: true, leaving: true });
    expect(() => ask("on-scene", JSON.parse(JSON.stringify(sheetQuestion(sheet, NOW))))).not.toThrow();
  });

  it("is one that the question takes as it stands", () => {
    const sent: unknown = JSON.parse(JSON.stringify(sheetQuestion(SHEET, NOW)));
    expect(ask("on-scene", sent)).toHaveProperty("reading.verdict");
  });

  it("asks for how she was when last sounded, however late it is", () => {
    expect(lastKnownQuestion(SHEET)).toMatchObject({ now: 360 });
    const later = { ...SHEET.soundings[1]!, ...mark(9), level: 0.3 };
    const other = lastKnownQuestion({ ...SHEET, soundings: [...SHEET.soundings, later] }, "s1")!;
    expect(other.spaces[1]).toMatchObject({ level: 0.1, readings: [{ at: 120, level: 0.1 }] });
    const sent: unknown = JSON.parse(JSON.stringify(lastKnownQuestion(SHEET)));
    expect(ask("on-scene", sent)).toHaveProperty("reading.verdict");
  });

  it("takes no patch or pump of a later instant for seen", () => {
    const patch = (at: string, open: number) => ({ ...SHEET.soundings[0]!, at, open });
    const patches = [patch("2027-03-14T10:05:30Z", 0.8), patch("2027-03-14T10:06:30Z", 0.05)];
    const pumps = [{ ...SHEET.pumps[0]!, runs: [{ from: mark(7).at, space: "s1", flow: 0.003 }] }];
    const known = lastKnownQuestion({ ...SHEET, patches, pumps });
    expect(known).toMatchObject({ now: 360, patches: [{ at: 330, open: 0.8 }], pumping: [] });
  });

  it("asks when a space is to be sounded next of that space alone, and the same until it is written about", () => {
    const asked = nextSoundingQuestion(SHEET, "s1")!;
    const patch = { ...SHEET.soundings[0]!, at: "2027-03-14T10:08:00Z", open: 0.5 };
    const other = { ...SHEET, soundings: [...SHEET.soundings, { ...SHEET.soundings[1]!, ...mark(9) }] };
    expect(asked).toMatchObject({ now: 360, spaces: [{ name: "Cabin" }] });
    expect(nextSoundingQuestion(other, "s1")).toEqual(asked);
    expect(nextSoundingQuestion({ ...SHEET, patches: [patch] }, "s1")).toMatchObject({ now: 480 });
    expect(nextSoundingQuestion({ ...SHEET, soundings: [] }, "s1")).toBeUndefined();
    expect(ask("on-scene", JSON.parse(JSON.stringify(asked)))).toHaveProperty("reading.nextSounding", 480);
  });

  it("says whether an engine can be opened up and a pump set lower", () => {
    const pumps = (more: object) => ({ ...SHEET, pumps: [{ ...SHEET.pumps[0]!, kit: "br-01", ...more }] });
    expect(sheetQuestion(pumps({}), NOW)).toMatchObject({ canOpenUp: false, canLower: true });
    expect(sheetQuestion(pumps({ throttle: 0.7, lift: 1 }), NOW)).toMatchObject({ canOpenUp: true, canLower: false });
    expect(sheetQuestion(SHEET, NOW)!.canOpenUp).toBe(true);
  });

  it("keeps two spaces of one name apart: two devices may each have written a cabin", () => {
    const [cabin] = SHEET.spaces;
    const asked = sheetQuestion({ ...SHEET, spaces: [cabin!, { ...cabin!, id: "s9" }] }, NOW)!;
    expect(asked.spaces.map(({ name }) => name)).toEqual(["Cabin", "Cabin 2"]);
    expect(ask("on-scene", JSON.parse(JSON.stringify(asked)))).toHaveProperty("word");
  });

  it("counts on one clock and back", () => {
    expect(secondsOn(SHEET, NOW)).toBe(420);
    expect(instantOn(SHEET, 420)).toBe(NOW);
  });
});
