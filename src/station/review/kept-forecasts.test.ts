import type { KeptForecast } from "#readiness";
import { describe, expect, it } from "vitest";
import { isKeptAlready } from "./index.ts";

const forecast = (minute: number, more: Partial<KeptForecast> = {}): KeptForecast => ({
  of: "lower",
  at: `2027-03-01T10:${minute}:00Z`,
  chance: 0.4,
  came: true,
  ...more,
});
const MARK = { entry: "e1", at: "2027-03-02T09:00:00Z", by: "ann", device: "tablet" };
const reviewed = (forecasts: KeptForecast[]) => ({ reviewed: { ...MARK, forecasts } });
const KEPT = [forecast(10), forecast(20)];

describe("a casualty that was gone through", () => {
  it("has nothing more to keep while its forecasts are the same, in whatever order and however rounded", () => {
    expect(isKeptAlready(reviewed(KEPT), [forecast(20, { chance: 0.4001 }), forecast(10)])).toBe(true);
  });

  it("has where there are more, where one came otherwise, and where it was not gone through yet", () => {
    expect(isKeptAlready(reviewed(KEPT), [...KEPT, forecast(30)])).toBe(false);
    expect(isKeptAlready(reviewed(KEPT), [forecast(10), forecast(20, { came: false })])).toBe(false);
    expect(isKeptAlready({}, KEPT)).toBe(false);
    expect(isKeptAlready({}, [])).toBe(false);
  });
});
