import { describe, expect, it } from "vitest";
import type { Entry } from "#log";
import type { OutboxLine } from "#web/device/index.ts";
import { aheadByTelling, aheadOf } from "./refusal.ts";

function refused(aheadMs?: number): OutboxLine {
  const entry: Entry = {
    id: "a",
    place: "north",
    subject: "kit:k1",
    kind: "mustered",
    at: "2020-01-01T00:10:00Z",
    by: "ann",
    device: "tablet",
    body: {},
  };
  return { entry, state: "refused", ...(aheadMs !== undefined && { aheadMs }) };
}

describe("how far a clock was ahead", () => {
  it("is the smallest measured, and nothing where one line was not measured", () => {
    expect(aheadOf([refused(9000), refused(7000)])).toBe(7000);
    expect(aheadOf([refused(9000), refused()])).toBeUndefined();
  });

  it("is taken from the word of whoever wrote the line: behind, where it was dated before its device joined", () => {
    const now = Date.parse("2026-03-14T12:00:00Z");
    const told = "2026-03-14T11:40:00Z";
    expect(aheadByTelling("2020-01-01T00:10:00Z", told, now)).toBe(
      Date.parse("2020-01-01T00:10:00Z") - Date.parse(told),
    );
    expect(aheadByTelling("2020-01-01T00:10:00Z", undefined, now)).toBeUndefined();
    expect(aheadByTelling("2020-01-01T00:10:00Z", "2026-03-14T12:00:01Z", now)).toBeUndefined();
  });
});
