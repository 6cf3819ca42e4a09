import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern, type Trouble } from "#kit";
import type { Turnaround } from "#readiness";
import { describe, expect, it } from "vitest";
import { minutesSinceRun, nextTry, troubleAfterRun } from "./index.ts";

const root = join(import.meta.dirname, "..", "..", "..", "patterns");
const patternOf = (name: string) => loadPattern(readFileSync(join(root, `${name}.yaml`), "utf8"), `${name}.yaml`);
const PETROL = patternOf("brinnet-450@2");
const start = PETROL.troubles!.find(({ sign }) => sign === "will-not-start")!;
const at = (minute: number) => new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
const now = Date.parse(at(20));
const runs = (from: number, to?: number) => [
  { from: at(from), space: "s1", flow: 0.005, ...(to !== undefined && { to: at(to) }) },
];
const ran = (from: number, to: number) => ({ pump: { running: false, runs: runs(from, to) } });
const chanceOf = (trouble: Trouble, cause: string) =>
  nextTry(trouble, [], new Map(), "bench").causes.find((one) => one.cause.id === cause)!.chance;
const tryOf = (trouble: Trouble, id: string) => trouble.tries.find((one) => one.id === id);

describe("how long ago an engine ran", () => {
  it("is told by the sheet, and is nothing where it never ran, ran long ago, or is no engine", () => {
    expect(minutesSinceRun(PETROL, ran(8, 17), now)).toBe(3);
    expect(minutesSinceRun(PETROL, { pump: { running: true, runs: runs(8) } }, now)).toBe(0);
    expect(minutesSinceRun(PETROL, { pump: { running: false, runs: [] } }, now)).toBeUndefined();
    expect(minutesSinceRun(PETROL, ran(-40, -11), now)).toBeUndefined();
    expect(minutesSinceRun(PETROL, {}, now)).toBeUndefined();
    expect(minutesSinceRun(patternOf("ossel-200@2"), ran(8, 17), now)).toBeUndefined();
  });

  it("is told by the runner's clocks: a run, and pulls after which it started", () => {
    const steps = PETROL.stages.flatMap((stage) => stage.steps);
    const stepOf = (kind: string) => steps.find(({ timer }) => timer?.kind === kind)!.id;
    const mark = { at: at(15), by: "ann", device: "d1", entry: "e1" };
    const clock = (kind: string, more: Omit<Turnaround["timers"][string], "mark">) => ({
      turnaround: { timers: { [stepOf(kind)]: { ...more, mark } } },
    });
    expect(minutesSinceRun(PETROL, clock("run", { seconds: 300 }), now)).toBe(5);
    expect(minutesSinceRun(PETROL, clock("run", { started: at(15) }), now)).toBe(0);
    expect(minutesSinceRun(PETROL, clock("pulls", { pulls: 3, reached: true }), now)).toBe(5);
    expect(minutesSinceRun(PETROL, clock("pulls", { pulls: 8 }), now)).toBeUndefined();
  });
});

describe("a trouble of an engine that ran 3 minutes ago", () => {
  const warm = troubleAfterRun(start, 3, []);

  it("holds what is so of a cold engine for unlikely, and asks nobody to shut the choke", () => {
    expect(chanceOf(warm, "choke-wrong")).toBeLessThan(chanceOf(start, "choke-wrong") / 5);
    expect(tryOf(warm, "choke-shut")).toBeUndefined();
    expect(tryOf(troubleAfterRun(start, 3, ["choke-shut"]), "choke-shut")).toBeDefined();
  });

  it("counts the wait for a cool engine into the minutes, and warns of hot parts where petrol or the plug is", () => {
    expect(tryOf(warm, "spare-plug")!.minutes).toBe(tryOf(start, "spare-plug")!.minutes + 12);
    expect(tryOf(warm, "fresh-fuel")!.minutes).toBe(tryOf(start, "fresh-fuel")!.minutes + 12);
    expect(tryOf(warm, "press-lead")!.minutes).toBe(tryOf(start, "press-lead")!.minutes);
    expect(tryOf(troubleAfterRun(start, 20, []), "spare-plug")!.minutes).toBe(tryOf(start, "spare-plug")!.minutes);
    expect(tryOf(warm, "loosen-cap")!.hazards).toContain("hot-exhaust");
    expect(tryOf(warm, "press-lead")!.hazards).not.toContain("hot-exhaust");
  });

  it("goes by what the pattern says of the engine, in whatever language it is worded", () => {
    const worded = (says: string, does: string): Trouble => ({
      ...start,
      causes: start.causes.map((one) => (one.id === "choke-wrong" ? { ...one, says } : one)),
      tries: start.tries.map((one) => (one.id === "choke-shut" || one.id === "spare-plug" ? { ...one, does } : one)),
    });
    const french = troubleAfterRun(worded("Volet ouvert à froid", "À froid."), 3, []);
    expect(chanceOf(french, "choke-wrong")).toBeLessThan(chanceOf(start, "choke-wrong") / 5);
    expect(french.tries.map(({ id, minutes }) => [id, minutes])).toEqual(
      warm.tries.map(({ id, minutes }) => [id, minutes]),
    );
  });

  it("counts a cause and a try of a pattern that says nothing of the engine as on any engine", () => {
    const old: Trouble = {
      ...start,
      causes: start.causes.map(({ engine: _engine, ...one }) => one),
      tries: start.tries.map(({ engine: _engine, ...one }) => one),
    };
    const after = troubleAfterRun(old, 3, []);
    expect(after.causes).toEqual(old.causes);
    expect(tryOf(after, "choke-shut")).toBeDefined();
  });

  it("loses no try of a leak, and is as it was where it did not run lately", () => {
    for (const trouble of PETROL.troubles!.filter(({ sign }) => sign === "leaks-fuel"))
      expect(troubleAfterRun(trouble, 3, []).tries.map(({ id }) => id)).toEqual(trouble.tries.map(({ id }) => id));
    expect(troubleAfterRun(start, undefined, [])).toBe(start);
  });
});
