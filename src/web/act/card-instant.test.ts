import { describe, expect, it } from "vitest";
import { isInstant } from "#base";
import { cardInstant } from "./card-instant.ts";

describe("when a card was filled in", () => {
  it("makes an instant with the device's offset", () => {
    const at = cardInstant("2026-03-14", "9:05");
    expect(at).toMatch(/^2026-03-14T09:05:00[+-]\d{2}:\d{2}$/);
    expect(isInstant(at!)).toBe(true);
    expect(new Date(at!).getHours()).toBe(9);
  });

  it("waits for both, and for a time of day", () => {
    expect(cardInstant(undefined, "9:05")).toBeUndefined();
    for (const time of ["", "9", "25:00", "9:60", "nine"]) expect(cardInstant("2026-03-14", time)).toBeUndefined();
  });
});
