import { describe, expect, it } from "vitest";
import { LATE_RECEIPT_MS, lateBy, sayLateness } from "./late-receipt.ts";

describe("a line received late", () => {
  it("LOG-14 is one that came more than a day after it was written, whatever the zones", () => {
    expect(lateBy("2027-03-10T10:00:00Z", "2027-03-11T10:00:00Z")).toBeUndefined();
    expect(lateBy("2027-03-10T10:00:00Z", "2027-03-11T10:00:00.001Z")).toBe(LATE_RECEIPT_MS + 1);
    expect(lateBy("2027-03-10T10:00:00+13:00", "2027-03-10T22:00:00Z")).toBe(25 * 3_600_000);
    expect(lateBy("2027-03-12T10:00:00Z", "2027-03-10T10:00:00Z")).toBeUndefined();
  });

  it("is told in hours, then in days, never longer than it was", () => {
    expect(sayLateness(25.9 * 3_600_000)).toBe("25\u00a0h 54\u00a0min after it was written");
    expect(sayLateness(47.9 * 3_600_000)).toBe("47\u00a0h 54\u00a0min after it was written");
    expect(sayLateness(71.9 * 3_600_000)).toBe("2 days after it was written");
  });
});
