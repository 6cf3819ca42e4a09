import type { CasualtyState, KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { nextPumps } from "./index.ts";

const at = (minute: number) => new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
const pump = (id: string, more: object = {}) => ({ pump: id, name: `Pump ${id}`, running: false, runs: [], ...more });
const sheet = (pumps: object[], pumpSeen: object[] = []) =>
  ({ id: "c1", opened: { at: at(0) }, pumps, pumpSeen }) as unknown as CasualtyState;
const kit = (id: string, casualty?: string) =>
  ({
    id,
    name: `Kit ${id}`,
    custody: casualty === undefined ? { kind: "here" } : { kind: "away", to: "her", at: at(1), casualty },
  }) as unknown as KitState;

const FAILED = pump("10", { kit: "br-10" });

describe("the next pump", () => {
  it("is none where the one that fails is the only one there, however many kits are ashore", () => {
    expect(nextPumps(sheet([FAILED]), [kit("br-10", "c1"), kit("br-2"), kit("br-3", "c9")], "br-10")).toEqual([]);
  });

  it("is one that stands still on the sheet, or was handed over to her, by its name", () => {
    const pumps = [FAILED, pump("2"), pump("3", { running: true, runs: [{ from: at(2) }] })];
    expect(nextPumps(sheet(pumps), [kit("br-4", "c1")], "br-10")).toEqual(["Kit br-4", "Pump 2"]);
  });

  it("is none that would not start itself, until it is started", () => {
    const seen = [{ pump: "2", sign: "wont-start", at: at(5) }];
    expect(nextPumps(sheet([FAILED, pump("2")], seen), [], "br-10")).toEqual([]);
    const ran = pump("2", { runs: [{ from: at(7), to: at(9) }] });
    expect(nextPumps(sheet([FAILED, ran], seen), [], "br-10")).toEqual(["Pump 2"]);
  });
});
