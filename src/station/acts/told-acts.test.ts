import { describe, expect, it } from "vitest";
import { Desk, refusalsOf } from "../sample-station.ts";
import { enrolKit, retireKit, tellTurnaround } from "./kit-acts.ts";

function desk(): Desk {
  const made = new Desk();
  const body = { name: "Kit 1", serial: "S-1", items: [], sheet: { file: "kits.csv", row: 2 } };
  made.do(enrolKit(made.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  return made;
}

describe("telling of a turnaround before this log", () => {
  it("is a keeper's, of a day or month that has come, on a kit on charge", () => {
    const made = desk();
    const tell = (person: string, day: string) => refusalsOf(tellTurnaround(made.as(person), made.kit(), { day }));
    expect(tell("ann", "2025-03-04")).toEqual([]);
    expect(tell("ann", "2026-01")).toEqual([]);
    expect(tell("ann", "2026-01-11")).toEqual(["SN-120"]);
    expect(tell("ann", "2026-02")).toEqual(["SN-120"]);
    expect(tell("ann", "1976-01")).toEqual([]);
    expect(tell("ann", "1975-12")).toEqual(["SN-130"]);
    expect(tell("ann", "1890-05-01")).toEqual(["SN-130"]);
    expect(tell("ben", "2025-03-04")).toEqual(["SN-103"]);
    made.do(retireKit(made.as("ann"), made.kit(), "Sold."));
    expect(tell("ann", "2025-03-04")).toEqual(["SN-114"]);
  });

  it("stands in the kit's history, with who told it", () => {
    const made = desk();
    made.do(tellTurnaround(made.as("ann"), made.kit(), { day: "2025-03-04", result: "Sealed" }));
    expect(made.kit().told).toMatchObject([{ day: "2025-03-04", result: "Sealed", by: "ann" }]);
    expect(made.kit().sheet).toEqual({ file: "kits.csv", row: 2 });
  });
});
