import { fetchWords } from "#words";
import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { sayDue } from "../top/say-due.ts";
import { callingOf, duesOf, type Due } from "./due.ts";
import { clockKey } from "../soundings/sounding-clocks.ts";

const messages = await fetchWords("en", "sheetTop");
const said = (due: Due | undefined) => due && sayDue(due, messages);

const T0 = Date.UTC(2027, 2, 14, 10);
const MINUTE = 60_000;
const stamp = (minute: number) => new Date(T0 + minute * MINUTE).toISOString();
const clocks = (next: { readonly [space: string]: number }) =>
  new Map(Object.entries(next).map(([space, minute]) => [clockKey("c1", space), T0 + minute * MINUTE]));
const PUMP = {
  pump: "p1",
  name: "Pump 1",
  running: true,
  runtime: 1200,
  filled: stamp(0),
  runs: [{ from: stamp(0), space: "s1", flow: 0.003 }],
};
const CASUALTY = {
  id: "c1",
  spaces: [{ id: "s1", name: "Cabin" }],
  soundings: [{ at: stamp(5), space: "s1", level: 0.4 }],
  pumps: [PUMP],
} as unknown as CasualtyState;
const words = (casualty: CasualtyState, next: { readonly [space: string]: number }) =>
  duesOf(casualty, clocks(next), T0 + 6 * MINUTE).map(said);

describe("what is due on a sheet", () => {
  it("is the next sounding and each refuelling, the first to come first", () => {
    expect(words(CASUALTY, { s1: 10 })).toEqual(["Sound", "Refuel Pump 1"]);
    expect(words(CASUALTY, { s1: 25 })).toEqual(["Refuel Pump 1", "Sound"]);
  });

  it("is a sounding of every space that was sounded, by its name", () => {
    const soundings = [...CASUALTY.soundings, { at: stamp(2), space: "s2", level: 0.2 }];
    const spaces = [...CASUALTY.spaces, { id: "s2", name: "Hold" }, { id: "s3", name: "Forepeak" }];
    const two = { ...CASUALTY, soundings, spaces, pumps: [] } as unknown as CasualtyState;
    expect(words(two, { s1: 10, s2: 4 })).toEqual(["Sound Hold", "Sound Cabin"]);
  });

  it("is no sounding that the last one has answered, while the next is being computed", () => {
    expect(words(CASUALTY, { s1: 4 })).toEqual(["Refuel Pump 1"]);
    expect(words(CASUALTY, {})).toEqual(["Refuel Pump 1"]);
  });

  it("is no sounding while fuel is smelt", () => {
    const smelt = { ...CASUALTY, fuelSmelt: { at: stamp(6), by: "me", entry: "e" }, pumps: [] };
    expect(words(smelt as unknown as CasualtyState, { s1: 10 })).toEqual([]);
  });
});

describe("what calls", () => {
  const dues = duesOf(CASUALTY, clocks({ s1: 10 }), T0 + 30 * MINUTE);
  const silenced = dues.map(({ key }) => key);

  it("is the longest due that nobody has silenced", () => {
    expect(callingOf(dues, { silenced: [] }, T0 + 9 * MINUTE)).toBeUndefined();
    expect(said(callingOf(dues, { silenced: [] }, T0 + 30 * MINUTE))).toBe("Sound");
    expect(said(callingOf(dues, { silenced: [dues[0]!.key] }, T0 + 30 * MINUTE))).toBe("Refuel Pump 1");
  });

  it("waits for a level in hand a minute and a half after the last tap, and no longer", () => {
    const sounding = dues.slice(0, 1);
    const now = T0 + 12 * MINUTE;
    expect(callingOf(sounding, { silenced: [], tapped: now - 89_000 }, now)).toBeUndefined();
    expect(said(callingOf(sounding, { silenced: [], tapped: now - 90_000 }, now))).toBe("Sound");
    expect(said(callingOf(sounding, { silenced: [], tapped: now + 3600_000 }, now))).toBe("Sound");
  });

  it("waits a minute where it was put off, and lets the next one call meanwhile", () => {
    const now = T0 + 30 * MINUTE;
    const putOff = new Map([[dues[0]!.key, now]]);
    expect(said(callingOf(dues, { silenced: [], putOff }, now + 59_000))).toBe("Refuel Pump 1");
    expect(said(callingOf(dues, { silenced: [], putOff }, now + 60_000))).toBe("Sound");
    expect(said(callingOf(dues.slice(0, 1), { silenced: [], putOff }, now - 15 * MINUTE))).toBe("Sound");
  });

  it("never waits for it with a tank about to run dry", () => {
    const now = T0 + 20 * MINUTE;
    expect(said(callingOf(dues, { silenced: [], tapped: now }, now))).toBe("Refuel Pump 1");
  });

  it("stays silent for this sounding and this tank, and calls anew for the next", () => {
    const later = {
      ...CASUALTY,
      soundings: [...CASUALTY.soundings, { ...CASUALTY.soundings[0]!, at: stamp(31) }],
      pumps: [{ ...PUMP, filled: stamp(31) }],
    } as unknown as CasualtyState;
    const next = duesOf(later, clocks({ s1: 36 }), T0 + 60 * MINUTE);
    expect(callingOf(dues, { silenced }, T0 + 60 * MINUTE)).toBeUndefined();
    expect(next.filter(({ key }) => silenced.includes(key))).toEqual([]);
  });

  it("calls once more, though silenced, when she is not known any longer", () => {
    const now = T0 + 36 * MINUTE;
    const unknown = duesOf(CASUALTY, clocks({ s1: 10 }), now);
    const calling = callingOf(unknown, { silenced }, now);
    expect(said(calling)).toBe("Sound");
    expect(callingOf(unknown, { silenced: [...silenced, calling!.key] }, now + MINUTE)).toBeUndefined();
  });
});
