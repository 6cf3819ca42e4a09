import { describe, expect, it } from "vitest";
import { Desk, SMALL_PATTERN } from "#src/station/sample-station.ts";
import { reportMissed } from "./missed-report.ts";

const CHANCE = { pattern: SMALL_PATTERN, check: SMALL_PATTERN.checks[0]!, found: 1, planted: 4 };

describe("a report on a line at which planted faults were missed", () => {
  it.each(["wrong", "impossible", "unclear"] as const)("says %s where that was chosen", (what) => {
    const act = reportMissed(new Desk().as("ben"), CHANCE, what);
    const note = "Drills: found 1 of 4 planted faults. Turn it.";
    expect(act).toMatchObject({
      kind: "entry",
      draft: { subject: "pattern:small", body: { step: "look", what, note } },
    });
  });
});
