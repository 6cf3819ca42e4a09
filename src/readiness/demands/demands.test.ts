import { describe, expect, it } from "vitest";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { KitState } from "../state.ts";
import { demandsOf } from "./index.ts";

const run = (at: string, more: object) => ({ turnaround: `t-${at}`, at: `${at}T10:00:00Z`, ...more });
const kitWith = (...runs: object[]) => ({ id: "k1", runs }) as unknown as KitState;
const sheet = (pump: object, seen: object[] = []) =>
  ({ pumps: [{ pump: "p1", kit: "k1", runs: [], ...pump }], pumpSeen: seen }) as unknown as CasualtyState;
const told = (kit: KitState, ...casualties: CasualtyState[]) =>
  demandsOf(kit, casualties).map(({ on, worked, failed }) => `${on} ${worked ? "worked" : failed}`);

const refused = (at: string) => ({ pump: "p1", sign: "wont-start", at });

describe("times that a kit was asked to start", () => {
  it("are the first starts of turnarounds: started and primed, not started, started without water", () => {
    const kit = kitWith(
      run("2027-01-01", { pulls: 2, started: true, primed: true }),
      run("2027-02-01", { pulls: 6, started: false }),
      run("2027-03-01", { pulls: 1, started: true, primed: false }),
      run("2027-04-01", { pulls: 1, started: true }),
    );
    expect(told(kit)).toEqual(["turnaround worked", "turnaround start", "turnaround prime", "turnaround worked"]);
  });

  it("are not turnarounds in which nobody counted pulls", () => {
    expect(told(kitWith(run("2027-01-01", { ratio: 0.9 })))).toEqual([]);
  });

  it("are casualties: one demand each, failed where anybody saw it refuse before it ran", () => {
    const ran = { runs: [{ from: "2027-05-01T10:00:00Z" }] };
    expect(told(kitWith(), sheet(ran))).toEqual(["casualty worked"]);
    expect(told(kitWith(), sheet({}, [refused("2027-05-01T09:55:00Z")]))).toEqual(["casualty start"]);
    expect(told(kitWith(), sheet(ran, [refused("2027-05-01T09:55:00Z")]))).toEqual(["casualty start"]);
    expect(told(kitWith(), sheet(ran, [refused("2027-05-01T11:00:00Z")]))).toEqual(["casualty worked"]);
    expect(told(kitWith(), sheet({}))).toEqual([]);
  });

  it("are counted once where the kit's own runs tell of the casualty too", () => {
    const ran = { runs: [{ from: "2027-05-01T10:00:00Z" }] };
    const kit = kitWith(run("2027-05-01", { casualty: { id: "c1", name: "boat" }, started: true }));
    expect(told(kit, sheet(ran))).toEqual(["casualty worked"]);
  });

  it("come oldest first, whatever they were", () => {
    const kit = kitWith(run("2027-06-01", { started: true }), run("2027-01-01", { started: false }));
    expect(told(kit, sheet({ runs: [{ from: "2027-05-01T10:00:00Z" }] }))).toEqual([
      "turnaround start",
      "casualty worked",
      "turnaround worked",
    ]);
  });
});
