import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import * as acts from "./casualty-acts.ts";
import { Desk, refusalsOf } from "../sample-station.ts";
import { strikeEntry } from "./station-acts.ts";

const SPACE = { id: "s1", name: "Cabin", sort: "cabin", part: "middle" } as const;
const OPENED = { name: "Grey yacht", boat: { kind: "sailing yacht", length: 11 }, space: SPACE } as const;
const PUMP = { pump: "p1", name: "Pump 1", space: "s1", running: true, flow: 0.003 };

const LEVEL = { space: "s1", level: 0.4, text: "40 cm" };

class Scene extends Desk {
  constructor() {
    super();
    this.do(acts.openCasualty(this.as("ben"), "c1", OPENED));
  }

  get casualty(): CasualtyState {
    return this.fold.read().casualties[0]!;
  }
}

describe("the sheet of a casualty", () => {
  it("is opened, sounded and pumped by crew, and by nobody who may only look", () => {
    const scene = new Scene();
    scene.do(acts.takeSounding(scene.as("ben"), scene.casualty, { space: "s1", level: 0.4, text: "40 cm" }));
    scene.do(acts.setPump(scene.as("ben"), scene.casualty, PUMP));
    scene.do(acts.refuelPump(scene.as("ben"), scene.casualty, "p1"));
    scene.do(acts.patchHole(scene.as("ben"), scene.casualty, { space: "s1", open: 0.5 }));
    scene.do(acts.seePump(scene.as("ben"), scene.casualty, { pump: "p1", sign: "weak" }));
    scene.do(acts.setTow(scene.as("ben"), scene.casualty, true));
    scene.do(acts.seeStability(scene.as("ben"), scene.casualty, { righting: "comes-back" }));
    scene.do(acts.noteCasualty(scene.as("ben"), scene.casualty, { about: "people", note: "Four aboard." }));
    expect(scene.casualty).toMatchObject({
      soundings: [{ level: 0.4 }],
      pumps: [{ running: true }],
      pumpSeen: [{ sign: "weak" }],
      tow: { under: true },
      patches: [{ open: 0.5 }],
      notes: [{ note: "Four aboard." }],
    });
    expect(
      refusalsOf(acts.takeSounding(scene.as("cat"), scene.casualty, { space: "s1", level: 0.4, text: "40 cm" })),
    ).toEqual(["SN-103"]);
  });

  it("knows its own spaces and pumps only", () => {
    const scene = new Scene();
    const elsewhere = { space: "s9", level: 0.4, text: "40 cm" };
    expect(refusalsOf(acts.takeSounding(scene.as("ben"), scene.casualty, elsewhere))).toEqual(["SN-154"]);
    expect(refusalsOf(acts.refuelPump(scene.as("ben"), scene.casualty, "p9"))).toEqual(["SN-155"]);
    expect(refusalsOf(acts.seePump(scene.as("ben"), scene.casualty, { pump: "p9", sign: "weak" }))).toEqual(["SN-155"]);
    const left = { outcome: "afloat", leftRunning: ["p9"] } as const;
    expect(refusalsOf(acts.closeCasualty(scene.as("ben"), scene.casualty, left))).toEqual(["SN-155"]);
    expect(refusalsOf(acts.changeCasualty(scene.as("ben"), scene.casualty, {}))).toEqual(["SN-150"]);
  });

  it("lets no pump start while fuel is smelt, and lets one be stopped", () => {
    const scene = new Scene();
    expect(refusalsOf(acts.clearFuel(scene.as("ben"), scene.casualty, "Clear."))).toEqual(["SN-152"]);
    scene.do(acts.setPump(scene.as("ben"), scene.casualty, PUMP));
    scene.do(acts.smellFuel(scene.as("ben"), scene.casualty));
    expect(refusalsOf(acts.setPump(scene.as("ben"), scene.casualty, PUMP))).toEqual(["SN-151"]);
    expect(refusalsOf(acts.setPump(scene.as("ben"), scene.casualty, { ...PUMP, running: false }))).toEqual([]);
    scene.do(acts.clearFuel(scene.as("ben"), scene.casualty, "Skipper found it clear."));
    expect(refusalsOf(acts.setPump(scene.as("ben"), scene.casualty, PUMP))).toEqual([]);
  });

  it("takes nothing more once it is closed, until that line is struck", () => {
    const scene = new Scene();
    const closing = scene.do(acts.closeCasualty(scene.as("ben"), scene.casualty, { outcome: "towed-in" }));
    const sound = () => acts.takeSounding(scene.as("ben"), scene.casualty, { space: "s1", level: 0.4, text: "40 cm" });
    expect(refusalsOf(sound())).toEqual(["SN-153"]);
    scene.do(strikeEntry(scene.as("ann"), closing, "Too early."));
    expect(refusalsOf(sound())).toEqual([]);
  });

  it("is gone through only once it is closed: what people add, and what had been forecast", () => {
    const scene = new Scene();
    const note = { about: "went-badly", note: "The cans were empty." } as const;
    const forecasts = [{ of: "lower", at: "2026-01-10T08:00:00Z", chance: 0.8, came: true }] as const;
    expect(refusalsOf(acts.noteReview(scene.as("ben"), scene.casualty, note))).toEqual(["SN-189"]);
    expect(refusalsOf(acts.keepReview(scene.as("ann"), scene.casualty, { forecasts }))).toEqual(["SN-189"]);
    scene.do(acts.closeCasualty(scene.as("ben"), scene.casualty, { outcome: "towed-in" }));
    scene.do(acts.noteReview(scene.as("ben"), scene.casualty, note));
    scene.do(acts.keepReview(scene.as("ann"), scene.casualty, { forecasts }));
    expect(scene.casualty.reviewNotes).toMatchObject([note]);
    expect(scene.casualty.reviewed?.forecasts).toEqual(forecasts);
    expect(refusalsOf(acts.noteReview(scene.as("ben"), scene.casualty, { ...note, pump: "none" }))).toEqual(["SN-155"]);
  });

  it("takes a sounding read earlier, and none read later, days ago, or in the second of another", () => {
    const scene = new Scene();
    const at = (taken: string) =>
      acts.takeSounding({ ...scene.as("ben"), now: "2026-01-10T08:00:00Z" }, scene.casualty, { ...LEVEL, taken });
    scene.do(at("2026-01-10T07:40:00Z"));
    expect(scene.casualty.soundings).toMatchObject([{ at: "2026-01-10T07:40:00Z", written: "2026-01-10T08:00:00Z" }]);
    expect(refusalsOf(at("2026-01-10T08:10:00Z"))).toEqual(["SN-156"]);
    expect(refusalsOf(at("2026-01-08T08:00:00Z"))).toEqual(["SN-157"]);
    expect(refusalsOf(at("2026-01-10T20:40:00.500+13:00"))).toEqual(["SN-158"]);
  });

  it("takes a pump and a patch of earlier, and none of later or of days ago", () => {
    const scene = new Scene();
    const desk = () => ({ ...scene.as("ben"), now: "2026-01-10T08:00:00Z" });
    scene.do(acts.setPump(desk(), scene.casualty, { ...PUMP, taken: "2026-01-10T07:50:00Z" }));
    scene.do(acts.patchHole(desk(), scene.casualty, { space: "s1", open: 0.5, taken: "2026-01-10T07:55:00Z" }));
    expect(scene.casualty.pumps[0]!.runs).toMatchObject([{ from: "2026-01-10T07:50:00Z" }]);
    expect(scene.casualty.patches).toMatchObject([{ at: "2026-01-10T07:55:00Z", written: "2026-01-10T08:00:00Z" }]);
    const [ahead, old] = ["2026-01-10T08:01:00Z", "2026-01-08T08:00:00Z"];
    expect(refusalsOf(acts.setPump(desk(), scene.casualty, { ...PUMP, taken: ahead }))).toEqual(["SN-156"]);
    const seen = { pump: "p1", sign: "no-water", taken: old } as const;
    expect(refusalsOf(acts.seePump(desk(), scene.casualty, seen))).toEqual(["SN-157"]);
  });

  it("takes no boat that cannot float as told, and says what would do in words", () => {
    const scene = new Scene();
    const boat = (more: object) =>
      acts.changeCasualty(scene.as("ben"), scene.casualty, { boat: { ...OPENED.boat, ...more } });
    expect(refusalsOf(boat({ beam: 39 }))).toEqual(["SN-160"]);
    expect(refusalsOf(boat({ kind: "motor boat", depth: 1.4, draught: 2 }))).toEqual(["SN-160"]);
    expect(refusalsOf(boat({ draught: 4 }))).toEqual(["SN-160"]);
    expect(boat({ beam: 39 })).toMatchObject({ because: [{ field: "beam", got: "39 m" }] });
    expect(
      refusalsOf(acts.openCasualty(scene.as("ben"), "c2", { ...OPENED, boat: { ...OPENED.boat, length: 100 } })),
    ).toEqual(["SN-160"]);
    scene.do(boat({ beam: 3, depth: 1.6, draught: 0.7 }));
    expect(scene.casualty.boat.depth).toBe(1.6);
  });

  it("takes no level above her coaming, below nothing, and no deck edge below what was sounded", () => {
    const scene = new Scene();
    const at = (level: number) => acts.takeSounding(scene.as("ben"), scene.casualty, { ...LEVEL, level });
    expect(refusalsOf(at(6))).toEqual(["SN-159"]);
    expect(refusalsOf(at(-0.1))).toContain("SN-159");
    scene.do(at(2.5));
    const shallow = { ...OPENED.boat, depth: 1.5 };
    expect(acts.changeCasualty(scene.as("ben"), scene.casualty, { boat: shallow })).toMatchObject({
      because: [{ code: "SN-161", field: "depth" }],
    });
    const short = { ...OPENED.boat, length: 5 };
    expect(acts.changeCasualty(scene.as("ben"), scene.casualty, { boat: short })).toMatchObject({
      because: [{ code: "SN-161", field: "length", got: "5 m" }],
    });
  });

  it("takes back a wrong sounding by a strike", () => {
    const scene = new Scene();
    const wrong = scene.do(
      acts.takeSounding(scene.as("ann"), scene.casualty, { space: "s1", level: 4, text: "400 cm" }),
    );
    scene.do(strikeEntry(scene.as("ann"), wrong, "Undone."));
    expect(scene.casualty.soundings).toEqual([]);
  });
});
