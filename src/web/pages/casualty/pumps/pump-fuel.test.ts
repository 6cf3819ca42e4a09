import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import type { CasualtyPump } from "#readiness";
import { minutesPastFuel, sayPastFuel } from "./pump-fuel.ts";

const words = await fetchWords("en", "sheetPumps");

const at = (minute: number) => Date.parse("2027-03-14T10:00:00Z") + minute * 60_000;
const iso = (minute: number) => new Date(at(minute)).toISOString();
const PUMP: CasualtyPump = {
  pump: "p",
  name: "Pump 10",
  space: "s",
  running: true,
  flow: 0.0078,
  runtime: 5400,
  filled: iso(0),
  runs: [{ from: iso(0), space: "s", flow: 0.0078 }],
};

describe("a pump past the time of its tank", () => {
  it("is none until a whole minute past", () => {
    expect(minutesPastFuel(PUMP, at(89))).toBe(0);
    expect(minutesPastFuel(PUMP, at(90.5))).toBe(0);
    expect(minutesPastFuel(PUMP, at(142))).toBe(52);
  });

  it("is none where the pump stands, was refuelled or has no known time", () => {
    expect(minutesPastFuel({ ...PUMP, running: false }, at(142))).toBe(0);
    expect(minutesPastFuel({ ...PUMP, filled: iso(80) }, at(142))).toBe(0);
    const { runtime: _, ...unknown } = PUMP;
    expect(minutesPastFuel(unknown, at(142))).toBe(0);
  });

  it("is asked about, not believed to pump", () => {
    expect(sayPastFuel(52, words)).toBe("past its fuel by 52\u00a0min: still running?");
  });
});
