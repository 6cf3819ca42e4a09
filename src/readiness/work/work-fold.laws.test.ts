import type { Entry } from "#log";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shuffled } from "#src/log/testing/shuffled.ts";
import { Hand, kitFrom, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { outlookOf } from "../standing/standing.ts";
import { workLinesOf } from "./work-lines.ts";

const DAYS = ["2026-06-20", "2026-07-01", "2026-07-10", "2026-07-30"] as const;

/** What one of two devices may say of the work next. */
const deed = fc.oneof(
  fc.constantFrom("ann", "ben", undefined).map((person) => (hand: Hand) => {
    hand.write("work-taken", { work: "opening", ...(person !== undefined && { person }) });
  }),
  fc.constantFrom(...DAYS, undefined).map((day) => (hand: Hand) => {
    hand.write("work-dated", { work: "opening", ...(day !== undefined && { day }) });
  }),
  fc.constantFrom(...DAYS).map((until) => (hand: Hand) => {
    hand.write("work-put-off", { work: "opening", until, reason: "Waiting for a part." });
  }),
  fc.constantFrom("2026-06-08", "2026-07-06").map((week) => (hand: Hand) => {
    hand.write("openings-planned", { openings: [{ id: "o", week, renews: [], by: [] }] });
  }),
  fc.constant((hand: Hand) => hand.write("mustered", { sealSeen: "00500", containerSound: true })),
  fc.constant((hand: Hand) => hand.write("work-taken", { work: "muster", person: "ann" })),
);
const deeds = fc.array(deed, { maxLength: 8 });

const apart = fc.tuple(deeds, deeds, deeds).map(([together, one, other]) => {
  const tablet = new Hand().enrol().open().doAll().seal();
  for (const act of together) act(tablet);
  const phone = tablet.fork("phone");
  for (const act of one) act(tablet);
  for (const act of other) act(phone);
  return { tablet, phone, all: [...tablet.entries, ...phone.entries] as readonly Entry[] };
});

describe("what two devices say of the same work", () => {
  it("reads the same in whatever order the lines arrive", () => {
    fc.assert(
      fc.property(apart, fc.infiniteStream(fc.nat()), ({ all }, keys) => {
        expect(kitFrom(shuffled(all, keys))).toEqual(kitFrom(all));
      }),
    );
  });

  it("never lets the work wait past the day that grounds the kit", () => {
    fc.assert(
      fc.property(apart, fc.constantFrom("2026-06-15", "2026-07-05", "2026-07-10"), ({ all }, today) => {
        const kit = kitFrom(all);
        const lines = workLinesOf(kit, SAMPLE_PATTERN, outlookOf(kit, SAMPLE_PATTERN, {}), today);
        const opening = lines.find(({ work }) => work === "opening")!;
        expect(opening.groundsAfter).toBe("2026-07-10");
        expect((opening.by ?? today) <= "2026-07-10").toBe(true);
      }),
    );
  });

  it("keeps both takers where each took it without sight of the other", () => {
    const tablet = new Hand().enrol();
    const phone = tablet.fork("phone");
    tablet.write("work-taken", { work: "opening", person: "ann" });
    phone.write("work-taken", { work: "opening", person: "ben" });
    const kit = kitFrom([...tablet.entries, ...phone.entries]);
    expect(kit.work?.opening?.takers.map(({ person }) => person).toSorted()).toEqual(["ann", "ben"]);
  });

  it("keeps the earlier of two days given without sight of each other", () => {
    for (const [one, other] of [
      ["2026-07-01", "2026-06-20"],
      ["2026-06-20", "2026-07-01"],
    ] as const) {
      const tablet = new Hand().enrol();
      const phone = tablet.fork("phone");
      tablet.write("work-dated", { work: "opening", day: one });
      phone.write("work-dated", { work: "opening", day: other });
      expect(kitFrom([...tablet.entries, ...phone.entries]).work?.opening?.day?.day).toBe("2026-06-20");
    }
  });
});
