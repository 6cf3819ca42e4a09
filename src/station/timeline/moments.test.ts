import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { timelineLines } from "./lines.ts";
import { sheetMoments } from "./moments.ts";
import { positionsTold, writersOf } from "./positions.ts";
import { pumpTracks } from "./pump-tracks.ts";

const PUMP = { pump: "p", name: "Pump 1", space: "s1", flow: 0.0037 };
const SECOND = { ...PUMP, pump: "q", name: "Pump 2" };
const OPENED: Bodies["casualty-opened"] = {
  name: "Grey Seal",
  boat: { kind: "motor boat", length: 10 },
  space: { id: "s1", name: "Cabin", sort: "cabin", part: "middle" },
  situation: { position: "57 12 N" },
};

/** A hand that writes a sheet's lines; another device writes on from what it has seen. */
class Pen {
  readonly lines: Entry[] = [];
  private seen: readonly string[] = [];

  constructor(
    readonly device: string,
    private readonly by = "ann",
  ) {}

  write<Kind extends EntryKind>(minute: number, kind: Kind, body: Bodies[Kind]): Entry {
    const id = `0190a000-0000-7000-8000-${minute.toString(16).padStart(8, "0")}${this.device.padStart(4, "0")}`;
    const at = new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
    const subject = "casualty:c1";
    const line = { id, place: "station", subject, kind, at, by: this.by, device: this.device, after: this.seen, body };
    this.lines.push(line);
    this.seen = [id];
    return line;
  }

  sound(minute: number, level: number, taken?: number): Entry {
    const when = taken === undefined ? {} : { taken: new Date(Date.UTC(2027, 2, 14, 10, taken)).toISOString() };
    return this.write(minute, "sounding-taken", { space: "s1", level, text: `${100 * level} cm`, ...when });
  }

  fork(device: string, by: string): Pen {
    const other = new Pen(device, by);
    other.seen = this.seen;
    return other;
  }
}

function levelsAt(lines: readonly Entry[], entry: Entry): readonly number[] | undefined {
  const moment = sheetMoments(lines).find((one) => one.entry === entry.id);
  return moment?.casualty.soundings.map(({ level }) => level);
}

describe("what was known at each moment", () => {
  it("has what people saw before anybody sounded", () => {
    const pen = new Pen("a");
    pen.write(0, "casualty-opened", OPENED);
    pen.write(1, "pump-set", { ...PUMP, running: true });
    const sign = pen.write(2, "stability-seen", { righting: "stays" });
    expect(sheetMoments(pen.lines).map(({ entry }) => entry)).toEqual([sign.id]);
  });

  it("begins with the first sounding and ends with the closing", () => {
    const pen = new Pen("a");
    pen.write(0, "casualty-opened", OPENED);
    pen.write(1, "pump-set", { ...PUMP, running: true });
    const first = pen.sound(2, 0.3);
    pen.write(9, "casualty-closed", { outcome: "afloat" });
    expect(sheetMoments(pen.lines).map(({ entry }) => entry)).toEqual([first.id]);
  });

  it("knows nothing of what another device wrote and had not sent", () => {
    const phone = new Pen("a");
    phone.write(0, "casualty-opened", OPENED);
    phone.sound(1, 0.3);
    const tablet = phone.fork("b", "ben");
    tablet.sound(2, 0.5);
    const last = phone.sound(3, 0.4);
    expect(levelsAt([...phone.lines, ...tablet.lines], last)).toEqual([0.3, 0.4]);
  });

  it("knows nothing of what was written late, and still of what was struck later", () => {
    const pen = new Pen("a");
    pen.write(0, "casualty-opened", OPENED);
    const wrong = pen.sound(1, 0.9);
    const then = pen.sound(4, 0.4);
    const late = pen.sound(6, 0.35, 2);
    pen.write(7, "struck", { entry: wrong.id, reason: "Misread." });
    const after = pen.sound(8, 0.45);
    expect(levelsAt(pen.lines, then)).toEqual([0.9, 0.4]);
    expect(levelsAt(pen.lines, late)).toEqual([0.9, 0.35, 0.4]);
    expect(levelsAt(pen.lines, after)).toEqual([0.35, 0.4, 0.45]);
  });

  it("goes by the time written in a line that does not say what its device knew", () => {
    const pen = new Pen("a");
    const lines = [pen.write(0, "casualty-opened", OPENED), pen.sound(1, 0.3), pen.sound(2, 0.4)].map(
      ({ after: _after, ...line }): Entry => line,
    );
    expect(levelsAt(lines, lines[1]!)).toEqual([0.3]);
  });

  it("is the same whatever the order in which the lines came", () => {
    const pen = new Pen("a");
    pen.write(0, "casualty-opened", OPENED);
    for (let minute = 1; minute < 7; minute += 1) pen.sound(minute, 0.3 + minute / 100);
    fc.assert(
      fc.property(fc.shuffledSubarray([...pen.lines], { minLength: pen.lines.length }), (lines) => {
        expect(sheetMoments(lines)).toEqual(sheetMoments(pen.lines));
      }),
      { seed: 20260118, numRuns: 40 },
    );
  });
});

function sheet() {
  const pen = new Pen("a");
  pen.write(0, "casualty-opened", OPENED);
  pen.sound(1, 0.3);
  pen.write(2, "pump-set", { ...PUMP, running: true });
  pen.write(3, "pump-start-told", { pump: "p", pulls: 2, primeSeconds: 30 });
  pen.write(4, "pump-set", { ...SECOND, running: true });
  pen.write(6, "pump-seen", { pump: "p", sign: "weak" });
  pen.write(8, "pump-set", { ...PUMP, running: false });
  pen.write(9, "casualty-changed", { situation: { position: "57 13 N" } });
  pen.write(10, "fuel-smelt", {});
  const lines = pen.lines.map((entry) => ({ entry }));
  const casualty = sheetMoments(pen.lines).at(-1)!.casualty;
  return { lines, tracks: pumpTracks(casualty, timelineLines({ lines, kits: [], units: "metric" })) };
}

describe("pumps, people and positions apart", () => {
  it("tells of each pump its own lines and what stopped it with the others, and how long it ran", () => {
    const [first, second] = sheet().tracks;
    expect(first).toMatchObject({ name: "Pump 1", ran: 360 });
    expect(first!.lines.map(({ words }) => words)).toEqual([
      expect.stringContaining("pumping"),
      "Pump 1: 2 pulls to start, water after 30\u00a0s",
      "Pump 1: moves little",
      "Pump 1 off",
    ]);
    expect(second).toMatchObject({ name: "Pump 2", ran: 360 });
    expect(second!.lines.map(({ words }) => words)).toEqual([
      expect.stringContaining("pumping"),
      "Fuel smelt: all pumps stopped",
    ]);
  });

  it("tells every position with its time, and who wrote how many lines", () => {
    const { lines } = sheet();
    expect(positionsTold(lines).map(({ position }) => position)).toEqual(["57 12 N", "57 13 N"]);
    expect(writersOf(lines)).toEqual([{ by: "ann", lines: 9 }]);
  });
});
