import { sampleTurnaround } from "#web/kit-view/sample.ts";
import { sampleKit } from "#web/pages/board/sample-kits.ts";
import { describe, expect, it } from "vitest";
import { isUnopened } from "./drill-at-hand.ts";

const DRILL = { id: "d1" };

describe("whether anybody has opened the kit of a drill", () => {
  it("goes by the turnaround that is open, or one closed in that drill", () => {
    const turnaround = { ...sampleTurnaround(), drill: "d1" };
    expect(isUnopened(sampleKit("1"), DRILL)).toBe(true);
    expect(isUnopened(sampleKit("1", { turnaround }), DRILL)).toBe(false);
    expect(isUnopened(sampleKit("1", { turnarounds: [turnaround] }), DRILL)).toBe(false);
    expect(isUnopened(sampleKit("1", { turnarounds: [turnaround] }), { id: "d2" })).toBe(true);
  });
});
