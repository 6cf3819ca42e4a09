import { fetchWords } from "#words";
import { cautionNamed, SIGNAL_WORDS } from "#base";
import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { hazardsAt, hazardsMet, isGraver, sayShort, type Drive, type Moment } from "./moments.ts";

const words = await fetchWords("en", "hazards");

const at = (minute: number) => new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
const SPACE = { id: "s1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const DRIVES = ["engine", "key", "mains", "unknown"] as const;
const MOMENTS: readonly Moment[] = [
  { kind: "lift" },
  ...DRIVES.map((drive) => ({ kind: "start", drive }) as const),
  { kind: "sound", space: SPACE },
  { kind: "tow" },
];

describe("hazards at their moment", () => {
  it.each(MOMENTS)("%j: gravest first, each in a few words", (moment) => {
    const ids = hazardsAt(moment);
    const order = ids.map((id) => Object.keys(SIGNAL_WORDS).indexOf(cautionNamed(id).signal));
    expect(order).toEqual([...order].sort((one, other) => one - other));
    for (const id of ids) expect(sayShort(id, words)!.split(" ").length).toBeLessThanOrEqual(12);
  });

  it("has petrol before it is smelt, carbon monoxide, hose and starter at an engine, and mains at an electric kit", () => {
    expect(hazardsAt({ kind: "start", drive: "engine" })).toEqual([
      "smell-before-start",
      "carbon-monoxide",
      "pressurised-hose",
      "recoil-kick",
    ]);
    expect(hazardsAt({ kind: "start", drive: "mains" })).toContain("electric-shock");
    expect(hazardsAt({ kind: "start", drive: "key" })).toContain("turns-by-key");
    expect(hazardsAt({ kind: "start", drive: "key" })).not.toContain("recoil-kick");
    expect(hazardsAt({ kind: "start", drive: "mains" })).not.toContain("carbon-monoxide");
  });

  it("has as many to lift as the kit's pattern says, with its mass, and two where nothing is known of it", () => {
    expect(sayShort("heavy-lift", words, { lifters: 4, mass: 58 })).toBe(
      "4 people at the lift, 58\u00a0kg; one calls it",
    );
    expect(sayShort("heavy-lift", words)).toBe("two to lift, one calls it");
    expect(sayShort("line-pulls", words, { lifters: 4, mass: 58 })).toBe(words.linePulls());
  });

  it("has batteries where they stand", () => {
    expect(hazardsAt({ kind: "sound", space: SPACE })).toEqual(["no-one-below-alone", "batteries-under-water"]);
    expect(hazardsAt({ kind: "sound", space: { ...SPACE, sort: "hold" } })).toEqual(["no-one-below-alone"]);
  });

  it("nobody goes below to sound an open well: her battery may stand in the water all the same", () => {
    const open = { ...SPACE, sort: "open", part: "whole" } as const;
    expect(hazardsAt({ kind: "sound", space: open })).toEqual(["batteries-under-water"]);
  });
});

const started = (...kits: readonly (string | undefined)[]) => ({ pumps: kits.map((kit) => ({ kit, runs: [{}] })) });
const start = (drive: Drive) => ({ kind: "start", drive }) as const;

describe("hazards once each", () => {
  const DRIVE: Readonly<Record<string, Drive>> = { petrol: "engine", diesel: "key", electric: "mains" };
  const driveOf = (kit: string | undefined): Drive => DRIVE[kit ?? ""] ?? "unknown";
  const BEFORE = { soundings: [], spaces: [SPACE], pumps: [{ kit: "petrol", runs: [] }] } as unknown as CasualtyState;
  const meet = (more: object, moment: Moment) => hazardsMet({ ...BEFORE, ...more } as CasualtyState, moment, driveOf);

  it("are all new before the thing itself was done, but for the lift of a kit that is aboard", () => {
    const fresh = MOMENTS.filter((moment) => meet({}, moment).met.length === 0);
    expect(MOMENTS.filter((moment) => !fresh.includes(moment))).toEqual([{ kind: "lift" }]);
    expect(meet({ pumps: [{ runs: [] }] }, { kind: "lift" }).fresh).toEqual(["line-pulls", "heavy-lift"]);
  });

  it("of a start are those no pump started before had: mains after a petrol kit, the cord after a diesel one", () => {
    expect(meet(started("petrol"), start("engine")).fresh).toEqual([]);
    expect(meet(started("petrol"), start("mains"))).toEqual({
      fresh: ["electric-shock"],
      met: ["smell-before-start", "pressurised-hose"],
    });
    expect(meet(started("diesel"), start("engine")).fresh).toEqual(["recoil-kick"]);
    expect(meet(started("petrol", "electric"), start("key")).fresh).toEqual(["turns-by-key"]);
    expect(meet(started(undefined), start("unknown")).fresh).toEqual([]);
    expect(meet(started("petrol"), start("unknown")).fresh).toEqual([]);
  });

  it("of a known start are none that only a pump nobody knows had: her own may be electric", () => {
    expect(meet(started(undefined), start("engine")).met).toEqual([]);
  });

  it("stand gravest first, whether new or met", () => {
    expect(isGraver(["carbon-monoxide"], ["recoil-kick"])).toBe(true);
    expect(isGraver(["carbon-monoxide"], ["electric-shock"])).toBe(false);
    expect(isGraver(["recoil-kick"], ["carbon-monoxide"])).toBe(false);
    expect(isGraver([], ["recoil-kick"])).toBe(false);
  });

  it("do not stand twice on one screen: what a pump above shows is met below", () => {
    const shown = hazardsAt({ kind: "start", drive: "engine" });
    const below = hazardsMet(BEFORE, { kind: "start", drive: "mains" }, driveOf, shown);
    expect(below.fresh).toEqual(["electric-shock"]);
  });

  it("of a sounding are those no space sounded before had", () => {
    const hold = { ...SPACE, id: "s2", sort: "hold" } as const;
    const cabin = { ...SPACE, id: "s3", sort: "cabin" } as const;
    const spaces = [SPACE, hold, cabin];
    const sounded = (space: string) => ({ spaces, soundings: [{ space, at: at(5) }] });
    expect(meet(sounded("s1"), { kind: "sound", space: hold }).fresh).toEqual([]);
    expect(meet(sounded("s2"), { kind: "sound", space: cabin }).fresh).toEqual(["batteries-under-water"]);
  });

  it("of a tow are there before it and until she was sounded in it, and met after", () => {
    const tow = (minute: number) => ({ tow: { at: at(minute), under: true }, soundings: [{ space: "s1", at: at(5) }] });
    expect(meet({ soundings: [{ space: "s1", at: at(5) }] }, { kind: "tow" }).fresh).toEqual(["under-tow"]);
    expect(meet(tow(6), { kind: "tow" }).fresh).toEqual(["under-tow"]);
    expect(meet(tow(4), { kind: "tow" }).fresh).toEqual([]);
  });
});
