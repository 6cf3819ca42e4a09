import type { CheckChance, ActContext } from "#station";
import { describe, expect, it } from "vitest";
import { reportMissed } from "./missed-report.ts";

const pattern = { id: "pump", version: 2, stages: [{ steps: [{ id: "look", checks: ["cord-look"] }] }] };
const CHANCE = {
  pattern,
  check: { id: "cord-look", ask: "Look at the cord." },
  found: 1,
  planted: 4,
} as unknown as CheckChance;

const DOING = {
  me: { id: "ann", role: "crew" },
  today: "2027-01-01",
  now: "2027-01-01T10:00:00Z",
} as unknown as ActContext;

describe("a report on a line at which planted faults were missed", () => {
  it.each(["wrong", "impossible", "unclear"] as const)("says %s where that was chosen", (what) => {
    const act = reportMissed(DOING, CHANCE, what);
    const note = "Drills: found 1 of 4 planted faults. Look at the cord.";
    expect(act).toMatchObject({
      kind: "entry",
      draft: { subject: "pattern:pump", body: { step: "look", what, note } },
    });
  });
});
