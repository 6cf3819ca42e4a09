import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import { describe, expect, it } from "vitest";
import { timelineLines, type TimelineLog } from "./casualty-lines.ts";

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

describe("a pump on the timeline", () => {
  it("is handed over, then pumps, then is off: put on her without running is no event", () => {
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
      "05 Pump 1 pumping, about 220 L/min",
      "08 Pump 1 now about 120 L/min",
      "09 Pump 1 refuelled",
      "12 Pump 1 off",
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
      "04 Pump 1 pumping, about 220 L/min",
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
