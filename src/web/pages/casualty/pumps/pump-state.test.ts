import type { CasualtyPump, CasualtyState, KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { hazardsLeft, isAmiss, isFaultNear, isUnstarted, signOf, unstartedOn } from "./pump-state.ts";

const at = (minute: number) => new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
const PUMP: CasualtyPump = { pump: "p1", name: "Pump 1", space: "s1", running: true, flow: 0.003, runs: [] };
const ran = (from: number, to?: number): CasualtyPump => ({
  ...PUMP,
  running: to === undefined,
  runs: [{ from: at(from), space: "s1", flow: 0.003, ...(to !== undefined && { to: at(to) }) }],
});
const seen = (minute: number, sign: string, pump = "p1") =>
  ({ pumpSeen: [{ at: at(minute), pump, sign }] }) as unknown as CasualtyState;

describe("what is known of a pump", () => {
  it("is that it was never started, until it ran once", () => {
    expect(isUnstarted({ ...PUMP, running: false })).toBe(true);
    expect(isUnstarted(ran(1))).toBe(false);
    expect(isUnstarted(ran(1, 3))).toBe(false);
  });

  it("is first of all which of them aboard was never started, on the sheet or not yet", () => {
    const casualty = {
      id: "c1",
      opened: { at: at(0) },
      pumps: [ran(1), { ...PUMP, pump: "k2", kit: "k2", name: "Pump 2", running: false }],
    } as unknown as CasualtyState;
    const kit = (id: string, to: string) =>
      ({ id, name: id.toUpperCase(), custody: { kind: "away", to, at: at(0), casualty: to } }) as unknown as KitState;
    expect(unstartedOn(casualty, [kit("k2", "c1"), kit("k3", "c1"), kit("k4", "c9")])).toEqual(["K3", "Pump 2"]);
  });

  it("is not to be started first where it will not start", () => {
    const idle = { ...PUMP, running: false };
    const casualty: CasualtyState = { ...seen(2, "wont-start"), pumps: [idle] };
    expect(unstartedOn(casualty, [])).toEqual([]);
    expect(unstartedOn({ ...casualty, pumpSeen: [] }, [])).toEqual(["Pump 1"]);
  });

  it("is the last sign of it, until it is started or stopped", () => {
    expect(signOf(seen(6, "no-water"), ran(5))?.sign).toBe("no-water");
    expect(signOf(seen(4, "no-water"), ran(5))).toBeUndefined();
    expect(signOf(seen(6, "no-water"), ran(5, 8))).toBeUndefined();
    expect(signOf(seen(9, "wont-start"), ran(5, 8))?.sign).toBe("wont-start");
    expect(signOf(seen(6, "no-water", "p2"), ran(5))).toBeUndefined();
    expect(signOf({} as CasualtyState, ran(5))).toBeUndefined();
  });

  it("has its fault to be found one tap away once it stopped, or a sign says that something is wrong", () => {
    expect(isFaultNear(ran(1, 3), undefined)).toBe(true);
    expect(isFaultNear({ ...PUMP, running: false }, "wont-start")).toBe(true);
    expect(isFaultNear({ ...PUMP, running: false }, undefined)).toBe(false);
    expect(isFaultNear(ran(1), "water")).toBe(false);
  });

  it("has each hazard of its start once: in its row before a start, else under what is wrong with it", () => {
    const start = ["smell-before-start", "carbon-monoxide"] as const;
    expect(hazardsLeft({ ...PUMP, running: false }, start, [])).toEqual([]);
    expect(hazardsLeft(ran(1, 3), start, [])).toEqual([]);
    expect(hazardsLeft(ran(1), start, [])).toEqual(start);
    expect(hazardsLeft(ran(1, 3), start, ["smell-before-start"])).toEqual(["carbon-monoxide"]);
  });

  it("is amiss by every sign but water", () => {
    expect(isAmiss("water")).toBe(false);
    expect(isAmiss(undefined)).toBe(false);
    expect(isAmiss("sucks-air")).toBe(true);
  });
});
