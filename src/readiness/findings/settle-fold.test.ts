import { describe, expect, it } from "vitest";
import { Hand, kitOf } from "../kit/sample-kit.ts";
import type { Hand as HandType } from "../kit/sample-kit.ts";

function twoDevices(prepare: (hand: HandType) => void): readonly [HandType, HandType] {
  const tablet = new Hand().enrol();
  prepare(tablet);
  return [tablet, tablet.fork("phone")];
}

const LINE = { turnaround: "t1", step: "look-pump", check: "turns" };

describe("what two devices did without sight of each other", () => {
  it("READY-15 is a difference where they answered a line differently; the one settled for stands", () => {
    const [tablet, phone] = twoDevices((hand) => hand.open());
    const wrong = tablet.write("step-answered", { ...LINE, answer: "wrong" });
    const seen = phone.write("step-answered", { ...LINE, answer: "seen" });
    const kit = kitOf(tablet, phone);
    expect(kit.toSettle).toMatchObject([{ what: "answer", step: "look-pump", check: "turns" }]);
    expect([...kit.toSettle[0]!.entries].sort()).toEqual([wrong.id, seen.id].sort());
    const keeper = phone.fork("desk");
    keeper.write("settled", { entries: [wrong.id, seen.id], stands: wrong.id, reason: "Felt it bind." });
    const settled = kitOf(tablet, phone, keeper);
    expect(settled.toSettle).toEqual([]);
    expect(settled.turnaround?.answers["look-pump/turns"]?.answer).toBe("wrong");
  });

  it("is none where the second had seen the first, or both said the same", () => {
    const [tablet] = twoDevices((hand) => hand.open());
    tablet.write("step-answered", { ...LINE, answer: "wrong" });
    const later = tablet.fork("phone");
    later.write("step-answered", { ...LINE, answer: "seen" });
    expect(kitOf(tablet, later).toSettle).toEqual([]);
    const [one, other] = twoDevices((hand) => hand.open());
    one.write("step-answered", { ...LINE, answer: "seen" });
    other.write("step-answered", { ...LINE, answer: "seen" });
    expect(kitOf(one, other).toSettle).toEqual([]);
  });

  it("stays to be settled where a third opinion came after the settling looked", () => {
    const [tablet, phone] = twoDevices((hand) => hand.open());
    const third = phone.fork("watch");
    const one = tablet.write("step-answered", { ...LINE, answer: "wrong" });
    const two = phone.write("step-answered", { ...LINE, answer: "seen" });
    third.write("step-answered", { ...LINE, answer: "not-possible", why: "Dark." });
    const keeper = new Hand("desk", 40);
    keeper.write("settled", { entries: [one.id, two.id], stands: one.id, reason: "Looked." });
    const kit = kitOf(tablet, phone, third, keeper);
    expect(kit.toSettle[0]?.entries).toHaveLength(3);
  });

  it("is a difference where both opened the kit; the other turnaround is set aside, its lines kept", () => {
    const [tablet, phone] = twoDevices(() => undefined);
    tablet.open("t1");
    phone.open("t2");
    phone.write("step-answered", { turnaround: "t2", step: "open", answer: "seen" });
    const kit = kitOf(tablet, phone);
    expect(kit.toSettle).toMatchObject([{ what: "turnaround" }]);
    expect([kit.turnaround?.id, kit.otherTurnarounds?.[0]?.id].sort()).toEqual(["t1", "t2"]);
    const keeper = new Hand("desk", 50);
    const { entries } = kit.toSettle[0]!;
    const stands = tablet.entries.at(-1)!.id;
    keeper.write("settled", { entries, stands, reason: "Begun first." });
    const settled = kitOf(tablet, phone, keeper);
    expect(settled.turnaround?.id).toBe("t1");
    expect(settled.otherTurnarounds).toBeUndefined();
    expect(settled.turnarounds).toMatchObject([{ id: "t2", closed: { how: "set-aside" } }]);
    expect(settled.turnarounds[0]?.answers["open"]?.answer).toBe("seen");
  });

  it("is a difference where both sealed it with different seals", () => {
    const [tablet, phone] = twoDevices((hand) => hand.open().doAll());
    tablet.seal("00500");
    phone.seal("00501");
    const kit = kitOf(tablet, phone);
    expect(kit.toSettle).toMatchObject([{ what: "seal" }]);
    const keeper = new Hand("desk", 55);
    const stands = phone.entries.at(-1)!.id;
    keeper.write("settled", { entries: kit.toSettle[0]!.entries, stands, reason: "Read it off the drum." });
    expect(kitOf(tablet, phone, keeper).seal?.number).toBe("00501");
  });

  it("is a difference where one handed over what the other had opened, and the kit counts as away until settled", () => {
    const [tablet, phone] = twoDevices(() => undefined);
    tablet.open();
    phone.write("handed-over", { to: "the vessel", method: "line", sealBroken: false });
    const kit = kitOf(tablet, phone);
    expect(kit.toSettle).toMatchObject([{ what: "custody" }]);
    const keeper = new Hand("desk", 20);
    const stands = tablet.entries.at(-1)!.id;
    keeper.write("settled", { entries: kit.toSettle[0]!.entries, stands, reason: "It never left." });
    expect(kitOf(tablet, phone, keeper).custody).toEqual({ kind: "here" });
  });

  it("is a difference where both fitted an item with different dates, or moved it to different places", () => {
    const [tablet, phone] = twoDevices(() => undefined);
    tablet.write("item-fitted", { item: "cells", fitted: "2026-01-10", printed: "2028-01", quantity: 2 });
    phone.write("item-fitted", { item: "cells", fitted: "2026-01-10", printed: "2029-01", quantity: 2 });
    tablet.write("kit-moved", { to: "south" });
    phone.write("kit-moved", { to: "west" });
    const what = kitOf(tablet, phone).toSettle.map((one) => one.what);
    expect([...what].sort()).toEqual(["contents", "place"]);
  });
});
