import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { outlookOf } from "../standing/standing.ts";
import type { StationPolicy } from "../station/station-state.ts";
import { nextOpening } from "./next-opening.ts";

/** Enrolled, turned round and sealed on Saturday 10 January 2026: fuel good until 10 July. */
const sealed = () => new Hand().enrol().open().doAll().seal();

function nextOn(hand: Hand, today: string, policy: StationPolicy = {}) {
  const kit = kitOf(hand);
  return nextOpening(kit, SAMPLE_PATTERN, outlookOf(kit, SAMPLE_PATTERN, policy), policy, today);
}

describe("the next opening of a kit", () => {
  it("is the day after which something grounds it that only an opening mends, long before the pattern's span ends", () => {
    expect(nextOn(sealed(), "2026-01-12")).toEqual({
      kind: "grounds",
      day: "2026-07-10",
      ends: { say: "outOfDate", of: { item: "Fuel" } },
    });
  });

  it("is now once that day has passed, and while the kit is open", () => {
    expect(nextOn(sealed(), "2026-07-11")).toEqual({ kind: "now" });
    expect(nextOn(sealed().open("t2", "00500"), "2026-01-12")).toEqual({ kind: "now" });
  });

  it("is the planned or the given one where that comes first, and never later than the day that grounds", () => {
    const planned = sealed();
    planned.write("openings-planned", { openings: [{ id: "o1", week: "2026-03-02", renews: [], by: [] }] });
    expect(nextOn(planned, "2026-01-12")).toEqual({ kind: "planned", day: "2026-03-02" });
    planned.write("work-dated", { work: "opening", day: "2026-02-20" });
    expect(nextOn(planned, "2026-01-12")).toEqual({ kind: "given", day: "2026-02-20" });
    const late = sealed();
    late.write("openings-planned", { openings: [{ id: "o1", week: "2026-09-07", renews: [], by: [] }] });
    expect(nextOn(late, "2026-01-12")).toMatchObject({ kind: "grounds", day: "2026-07-10" });
  });

  it("is the end of the interval that was accepted for its pattern, where that comes first", () => {
    const policy = { openings: { [SAMPLE_PATTERN.id]: { months: 3 } } };
    expect(nextOn(sealed(), "2026-01-12", policy)).toEqual({ kind: "accepted", day: "2026-04-10" });
  });

  it("is not brought about by what limits the kit or only wants to be seen", () => {
    const hand = sealed();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    expect(nextOn(hand, "2026-01-12")).toMatchObject({ kind: "grounds", day: "2026-07-10" });
  });
});
