import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import { describe, expect, it } from "vitest";
import { timelineLines, type TimelineLog } from "./lines.ts";

const PUMP = { pump: "p", name: "Pump 1", space: "s1", running: false, flow: 0.0037 };

function line<Kind extends EntryKind>(minute: number, kind: Kind, body: Bodies[Kind]): { readonly entry: Entry } {
  const at = new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
  return {
    entry: { id: `e${minute}`, place: "station", subject: "casualty:c1", kind, at, by: "ann", device: "d", body },
  };
}

function wordsOf(lines: TimelineLog["lines"], kits: TimelineLog["kits"] = []): readonly string[] {
  const told = timelineLines({ lines, kits, units: "metric" });
  return told.map(({ at, words }) => `${at.slice(14, 16)} ${words.replaceAll("\u00a0", " ")}`);
}

describe("a line received late", () => {
  it("says when it was received, and how long that was after it was written", () => {
    const late = { ...line(1, "casualty-noted", { about: "other", note: "Rope in the prop." }) };
    const told = wordsOf([
      { ...late, received: "2027-03-17T10:30:00Z" },
      { ...late, received: "2027-03-14T10:30:00Z" },
    ]);
    expect(told).toEqual([
      "01 Rope in the prop. [received 2027-03-17 10:30 UTC, 3 days after it was written]",
      "01 Rope in the prop.",
    ]);
  });
});

describe("a pump on the timeline", () => {
  it("is told line by line: handed over, put on her, pumping, set otherwise, refuelled, off, off again", () => {
    const handed = { at: "2027-03-14T10:02:00Z", method: "line", by: "ann" } as const;
    const lines = [
      line(2, "pump-set", PUMP),
      line(5, "pump-set", { ...PUMP, running: true }),
      line(6, "pump-set", { ...PUMP, running: true, lift: 2 }),
      line(8, "pump-set", { ...PUMP, running: true, flow: 0.002 }),
      line(9, "pump-refuelled", { pump: "p" }),
      line(12, "pump-set", PUMP),
      line(13, "pump-set", { ...PUMP, flow: 0.001 }),
    ];
    expect(wordsOf(lines, [{ name: "Pump 1", handed }])).toEqual([
      "02 Pump 1 handed over, on a line",
      "02 Pump 1 not running",
      "05 Pump 1 pumping, about 220 L/min",
      "06 Pump 1 now: lift 2.0 m",
      "08 Pump 1 now: about 120 L/min",
      "09 Pump 1 refuelled",
      "12 Pump 1 off",
      "13 Pump 1 off, as before",
    ]);
  });

  it("is told apart from a kit of its name", () => {
    const kit = { ...PUMP, pump: "k1", kit: "k1", running: true };
    const lines = [line(2, "pump-set", PUMP), line(3, "pump-set", kit), line(4, "pump-refuelled", { pump: "p" })];
    expect(wordsOf(lines)).toEqual([
      "02 Pump 1 (other pump) not running",
      expect.stringMatching(/^03 Pump 1 \(kit\) pumping/),
      "04 Pump 1 (other pump) refuelled",
    ]);
  });

  it("stops with fuel smelt, and is told again when it starts", () => {
    const on = { ...PUMP, running: true };
    const lines = [
      line(1, "pump-set", on),
      line(2, "fuel-smelt", {}),
      line(3, "pump-set", PUMP),
      line(4, "pump-set", on),
    ];
    expect(wordsOf(lines)).toEqual([
      "01 Pump 1 pumping, about 220 L/min",
      "02 Fuel smelt: all pumps stopped",
      "03 Pump 1 off, as before",
      "04 Pump 1 pumping, about 220 L/min",
    ]);
  });

  it("is told with what was seen of it, each pump by its name, in its place by when it was", () => {
    const lines = [
      line(1, "pump-set", { ...PUMP, running: true }),
      line(2, "pump-set", { ...PUMP, pump: "q", name: "Pump 2", running: true }),
      line(3, "pump-seen", { pump: "q", sign: "sucks-air" }),
      line(9, "pump-seen", { pump: "p", sign: "no-water", taken: "2027-03-14T10:04:00.000Z" }),
    ];
    expect(wordsOf(lines).slice(2)).toEqual([
      "03 Pump 2: sucks air",
      "04 Pump 1: no water comes (written down at 10:09)",
    ]);
  });

  it("is told where its line was struck, which changes nothing", () => {
    const struck = { ...line(1, "pump-set", { ...PUMP, running: true }), struck: "Not yet." };
    expect(wordsOf([struck, line(2, "pump-set", { ...PUMP, running: true })])).toEqual([
      "01 STRUCK (Not yet.): Pump 1 pumping, about 220 L/min",
      "02 Pump 1 pumping, about 220 L/min",
    ]);
  });
});

const SPACE = { id: "s1", name: "engine room", sort: "engine-room", part: "aft" } as const;
const SPACES = ["engine room", "cabin"].map((name, i) =>
  line(0, i === 0 ? "casualty-opened" : "casualty-changed", {
    name: "Corrie Lass",
    boat: { kind: "motor boat", length: 9 },
    space: { id: `s${i + 1}`, name, sort: "cabin", part: "aft" },
  }),
);

describe("every line is told", () => {
  it("the opening with what her skipper told by radio, and when; an older one without", () => {
    const opened = { name: "Corrie Lass", boat: { kind: "motor boat", length: 9 }, space: SPACE } as const;
    const told = { at: "2027-03-14T09:52:00Z", water: 0.5, rising: 0.03 / 120 };
    const lines = [
      line(0, "casualty-opened", { ...opened, told, hole: { diameter: 0.09, depth: 0.6 }, note: "Two aboard." }),
      line(1, "casualty-opened", opened),
    ];
    expect(wordsOf(lines)).toEqual([
      "00 Sheet opened: Corrie Lass. Told by radio: 50 cm of water, rising 3 cm in 2 min at 09:52; hole 90 mm across, 0.6 m below the waterline. Two aboard.",
      "01 Sheet opened: Corrie Lass",
    ]);
  });

  it("a struck stop and a struck refuelling, as things stood when they were written", () => {
    const lines = [
      line(1, "pump-set", { ...PUMP, running: true }),
      { ...line(2, "pump-set", PUMP), struck: "Still running." },
      { ...line(3, "pump-refuelled", { pump: "p" }), struck: "Another one." },
      line(4, "pump-set", PUMP),
    ];
    expect(wordsOf(lines)).toEqual([
      "01 Pump 1 pumping, about 220 L/min",
      "02 STRUCK (Still running.): Pump 1 off",
      "03 STRUCK (Another one.): Pump 1 refuelled",
      "04 Pump 1 off",
    ]);
  });

  it("a struck stop of a pump that no line before it knows, and a refuelling before its first setting", () => {
    const lines = [{ ...line(1, "pump-set", PUMP), struck: "Wrong pump." }, line(2, "pump-refuelled", { pump: "p" })];
    expect(wordsOf(lines)).toEqual(["01 STRUCK (Wrong pump.): Pump 1 not running", "02 Pump 1 refuelled"]);
  });

  it("throttle, lift, tank and space, where the flow rounds the same too", () => {
    const on = { ...PUMP, running: true, throttle: 1, lift: 2, runtime: 5400 };
    const lines = [
      ...SPACES,
      line(1, "pump-set", on),
      line(2, "pump-set", { ...on, throttle: 0.85, flow: 0.00371 }),
      line(3, "pump-set", { ...on, throttle: 0.85, flow: 0.00371, lift: 3 }),
      line(4, "pump-set", { ...on, throttle: 0.85, flow: 0.00371, lift: 3, space: "s2" }),
      line(5, "pump-set", { ...on, throttle: 0.85, flow: 0.00371, lift: 3, space: "s2" }),
    ];
    expect(wordsOf(lines).slice(2)).toEqual([
      "01 Pump 1 pumping, about 220 L/min, drawing from engine room, engine full, lift 2.0 m, a tank lasts 90 min",
      "02 Pump 1 now: about 220 L/min, engine at 85 % speed",
      "03 Pump 1 now: lift 3.0 m",
      "04 Pump 1 now: drawing from cabin",
      "05 Pump 1 as before, about 220 L/min",
    ]);
  });

  it("with its space, where she has more than one", () => {
    const lines = [
      ...SPACES,
      line(1, "sounding-taken", { space: "s2", level: 0.5, text: "50 cm" }),
      line(2, "hole-patched", { space: "s1", open: 0.5 }),
    ];
    expect(wordsOf(lines).slice(2)).toEqual([
      "01 Sounded 50 cm in cabin",
      "02 Plugged or patched: 50 % still open in engine room",
    ]);
  });
});

describe("a sounding on the timeline", () => {
  it("stands where it was read, and says when it was written down", () => {
    const late = { space: "s1", level: 0.4, text: "40 cm", taken: "2027-03-14T23:01:00+13:00" };
    const lines = [
      line(5, "sounding-taken", { space: "s1", level: 0.5, text: "50 cm" }),
      line(9, "sounding-taken", late),
    ];
    expect(wordsOf(lines)).toEqual(["01 Sounded 40 cm (written down at 10:09)", "05 Sounded 50 cm"]);
  });
});
