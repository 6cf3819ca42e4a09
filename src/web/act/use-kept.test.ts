import { describe, expect, it } from "vitest";
import { isLongAgo, readKept } from "./use-kept.ts";

const EMPTY = { typed: {}, note: "", photos: [] };

describe("what was entered before the answer", () => {
  it("comes back as kept", () => {
    const kept = { typed: { quantity: "55 cm" }, note: "wet", photos: [] };
    expect(readKept(JSON.stringify(kept), EMPTY)).toEqual(kept);
  });

  it("counts as nothing where it is missing or broken, and is filled up where it is partial", () => {
    expect(readKept(null, EMPTY)).toEqual(EMPTY);
    expect(readKept("{broken", EMPTY)).toEqual(EMPTY);
    expect(readKept('{"note":"wet"}', EMPTY)).toEqual({ ...EMPTY, note: "wet" });
  });

  it("is forgotten only once its hours are over", () => {
    const hour = 3_600_000;
    expect(isLongAgo(undefined, 20 * hour, 12)).toBe(false);
    expect(isLongAgo(8 * hour, 20 * hour, 12)).toBe(false);
    expect(isLongAgo(7 * hour, 20 * hour, 12)).toBe(true);
  });
});
