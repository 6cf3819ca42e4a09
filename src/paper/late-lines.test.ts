import type { Entry } from "#log";
import { describe, expect, it } from "vitest";
import { lateRow } from "./late-lines.ts";

describe("a line received late, on a record", () => {
  it("is told with when it was written, what it is, by whom and when it was received", () => {
    const entry: Entry = {
      id: "e1",
      place: "north",
      subject: "kit:k1",
      kind: "step-answered",
      at: "2027-03-14T10:02:00+01:00",
      by: "ann",
      device: "phone",
      body: { turnaround: "t1", step: "open" },
    };
    const line = { entry, received: "2027-03-17T11:30:00.000Z" };
    expect(lateRow(line, (person) => `Name of ${person}`).cells).toEqual([
      "2027-03-14 10:02",
      "step answered: open",
      "Name of ann",
      "2027-03-17 11:30, 3 days after it was written",
    ]);
  });
});
