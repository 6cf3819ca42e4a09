import type { CasualtyState } from "#readiness";
import { STALE_AFTER } from "#flooding";
import { describe, expect, it } from "vitest";
import { freshnessOf } from "./freshness.ts";

const T0 = Date.UTC(2027, 2, 14, 10);
const MINUTE = 60_000;
const soundings = [
  { at: new Date(T0).toISOString(), space: "s1", level: 0.3 },
  { at: new Date(T0 + 20 * MINUTE).toISOString(), space: "s2", level: 0.3 },
] as unknown as CasualtyState["soundings"];

describe("how old the last sounding is", () => {
  it("is too old after half an hour, and not a moment before", () => {
    expect(freshnessOf({ soundings }, "s1", T0 + 30 * MINUTE).isStale).toBe(false);
    expect(freshnessOf({ soundings }, "s1", T0 + 31 * MINUTE)).toEqual({
      last: T0,
      age: 31 * MINUTE,
      isStale: true,
    });
  });

  it("is too old as soon as the estimate calls it stale", () => {
    expect(freshnessOf({ soundings }, "s1", T0 + 1000 * STALE_AFTER).isStale).toBe(false);
    expect(freshnessOf({ soundings }, "s1", T0 + 1000 * STALE_AFTER + 1).isStale).toBe(true);
  });

  it("is counted for each space by itself", () => {
    expect(freshnessOf({ soundings }, "s2", T0 + 31 * MINUTE).isStale).toBe(false);
  });

  it("is no age before the first one, and none by a clock set back", () => {
    expect(freshnessOf({ soundings }, "s3", T0)).toEqual({ age: 0, isStale: false });
    expect(freshnessOf({ soundings }, "s1", T0 - MINUTE).age).toBe(0);
  });
});
