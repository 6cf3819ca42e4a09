import { describe, expect, it } from "vitest";
import { foldKit } from "./kit-fold.ts";
import { Hand, kitFrom, kitOf } from "./sample-kit.ts";

describe("a kit folded from its entries", () => {
  it("has what it was enrolled with", () => {
    const kit = kitOf(new Hand().enrol());
    expect(kit).toMatchObject({ id: "k1", name: "Kit 1", serial: "S-1", place: "north", pattern: "sample@1" });
    expect(kit.seal?.number).toBe("00417");
    expect(kit.contents["cells"]).toMatchObject({ printed: "2027-03", quantity: 1 });
  });

  it("has no seal while a turnaround is open, and the new one once it is sealed", () => {
    const hand = new Hand().enrol().open();
    expect(kitOf(hand)).toMatchObject({ turnaround: { id: "t1" } });
    expect(kitOf(hand).seal).toBeUndefined();
    const closed = kitOf(hand.doAll().seal());
    expect(closed.seal?.number).toBe("00500");
    expect(closed.turnaround).toBeUndefined();
    expect(closed.turnarounds[0]?.closed).toMatchObject({ how: "sealed", seal: "00500" });
    expect(closed.seals.map((seal) => `${seal.number} ${seal.what}`)).toEqual([
      "00417 fitted",
      "00417 seen",
      "00417 broken",
      "00500 fitted",
    ]);
  });

  it("keeps the latest answer to a line and draws a run from the turnaround", () => {
    const hand = new Hand().enrol().open();
    hand.write("step-answered", { turnaround: "t1", step: "look-pump", check: "turns", answer: "wrong" });
    hand.write("step-answered", { turnaround: "t1", step: "look-pump", check: "turns", answer: "seen" });
    hand.write("pulls-counted", { turnaround: "t1", step: "start", pulls: 4, started: true });
    hand.write("pulls-counted", { turnaround: "t1", step: "spare", pulls: 1, started: true });
    const kit = kitOf(hand);
    expect(kit.turnaround?.answers["look-pump/turns"]?.answer).toBe("seen");
    expect(kit.runs).toMatchObject([{ turnaround: "t1", pulls: 4, pullsStep: "start", started: true }]);
    expect(kit.turnaround?.timers["spare"]).toMatchObject({ pulls: 1 });
  });

  it("counts a timer from the wall clock of its start, and keeps its seconds once stopped", () => {
    const hand = new Hand().enrol().open();
    const begun = hand.write("timer-started", { turnaround: "t1", step: "warm" });
    expect(kitOf(hand).turnaround?.timers["warm"]?.started).toBe(begun.at);
    const stop = { turnaround: "t1", step: "warm", started: begun.at, seconds: 301, reached: true };
    hand.write("timer-stopped", stop);
    const timer = kitOf(hand).turnaround?.timers["warm"];
    expect(timer).toMatchObject({ seconds: 301, reached: true });
    expect(timer?.started).toBeUndefined();
  });

  it("records a seal that was seen and is not the one on record, until the next sealing", () => {
    const hand = new Hand().enrol();
    hand.write("mustered", { sealSeen: "00471", containerSound: true });
    expect(kitOf(hand).sealMismatch).toMatchObject({ expected: "00417", seen: "00471" });
    hand.open("t1", "00471");
    expect(kitOf(hand).sealMismatch).toBeDefined();
    expect(kitOf(hand.doAll().seal()).sealMismatch).toBeUndefined();
  });

  it("takes letter case and blanks for the same seal, leading zeros not", () => {
    const hand = new Hand();
    hand.write("kit-enrolled", { name: "K", serial: "S", seal: "ab 012", items: [] });
    hand.write("mustered", { sealSeen: "AB012", containerSound: true });
    expect(kitOf(hand).sealMismatch).toBeUndefined();
    hand.write("mustered", { sealSeen: "AB12", containerSound: true });
    expect(kitOf(hand).sealMismatch).toBeDefined();
  });

  it("closes a finding only by a proof of which every check was seen right, and opens it again by one that was not", () => {
    const hand = new Hand().enrol();
    const raise = { finding: "f1", item: "pump", mode: "pump-seized", effect: "grounds" as const, photos: [] };
    hand.write("finding-raised", raise);
    hand.write("remedy-made", { finding: "f1", how: "mended", note: "Freed." });
    expect(kitOf(hand).findings[0]?.closed).toBeUndefined();
    hand.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "wrong" }] });
    expect(kitOf(hand).findings[0]?.closed).toBeUndefined();
    hand.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "seen" }] });
    expect(kitOf(hand).findings[0]?.closed).toBeDefined();
    hand.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "not-possible" }] });
    expect(kitOf(hand).findings[0]?.closed).toBeUndefined();
  });

  it("READY-12 closes a finding only by every check that finds it, whatever the line says", () => {
    const hand = new Hand().enrol();
    hand.write("finding-raised", { finding: "f1", item: "cells", mode: "cells-old", effect: "grounds", photos: [] });
    hand.write("remedy-made", { finding: "f1", how: "mended", note: "New cells." });
    const date = { check: "cell-date", answer: "seen" as const };
    const volts = { check: "volts", answer: "seen" as const };
    hand.write("finding-proved", { finding: "f1", checks: [date] });
    expect(kitOf(hand).findings[0]?.closed).toBeUndefined();
    hand.write("finding-proved", { finding: "f1", checks: [date, { check: "turns", answer: "seen" }] });
    expect(kitOf(hand).findings[0]?.closed).toBeUndefined();
    const whole = hand.write("finding-proved", { finding: "f1", checks: [date, volts] });
    hand.write("finding-proved", { finding: "f1", checks: [date] });
    expect(kitOf(hand).findings[0]?.closed?.entry).toBe(whole.id);
  });

  it("goes away, comes back with what it met, and is here again once turned round", () => {
    const hand = new Hand().enrol();
    hand.write("handed-over", { to: "the vessel", method: "hoisted", sealBroken: true });
    expect(kitOf(hand).custody).toMatchObject({ kind: "away", to: "the vessel" });
    expect(kitOf(hand).seal).toBeUndefined();
    hand.write("returned", { exposure: ["salt"] });
    expect(kitOf(hand).custody).toMatchObject({ kind: "back", exposure: ["salt"] });
    expect(kitOf(hand.open().doAll().seal()).custody).toEqual({ kind: "here" });
  });

  it("is untouched by what is folded onto it later", () => {
    const hand = new Hand().enrol().open();
    const before = kitOf(hand);
    const copy = structuredClone(before);
    const known = new Map(
      hand
        .doAll()
        .seal()
        .entries.map((entry) => [entry.id, entry]),
    );
    const history = { entry: (id: string) => known.get(id), knew: () => true, madeApart: () => false };
    const after = foldKit(before, hand.entries.slice(2), history);
    expect(before).toEqual(copy);
    expect(after?.seal?.number).toBe("00500");
    expect(after?.turnarounds).toHaveLength(1);
  });

  it("forgets a line that was struck, and nothing else", () => {
    const hand = new Hand().enrol();
    const wrong = hand.write("mustered", { sealSeen: "99999", containerSound: false });
    hand.write("struck", { entry: wrong.id, reason: "Read the wrong kit." });
    const kit = kitOf(hand);
    expect(kit.sealMismatch).toBeUndefined();
    expect(kit.unsound).toBeUndefined();
    expect(kit.seal?.number).toBe("00417");
  });
});

describe("a kit whose devices had wrong clocks", () => {
  it("loses nothing that sorts before its enrolment", () => {
    const late = new Hand("tablet", 30).enrol();
    const early = late.fork("phone");
    const raise = { finding: "f1", item: "pump", mode: "pump-seized", effect: "grounds" as const, photos: [] };
    const entry = { ...early.write("finding-raised", raise), at: "2025-01-10T08:00:00Z" };
    const kit = kitFrom([...late.entries, entry]);
    expect(kit).toMatchObject({ name: "Kit 1", seal: { number: "00417" }, findings: [{ id: "f1" }] });
  });

  it("applies a proof that sorts before the finding it closes", () => {
    const hand = new Hand().enrol();
    const raise = { finding: "f1", item: "pump", mode: "pump-seized", effect: "grounds" as const, photos: [] };
    hand.write("finding-raised", raise);
    const phone = hand.fork("phone");
    const remedy = phone.write("remedy-made", { finding: "f1", how: "mended", note: "Freed." });
    const proof = phone.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "seen" }] });
    const kit = kitFrom([
      ...hand.entries,
      { ...remedy, at: "2025-01-10T08:00:00Z" },
      { ...proof, at: "2025-01-10T08:01:00Z" },
    ]);
    expect(kit.findings[0]?.closed).toBeDefined();
    expect(kit.findings[0]?.remedies).toHaveLength(1);
    expect(kit.waiting).toBeUndefined();
  });

  it("keeps the seal that stood on record at the opening, also where a second device opens the kit too", () => {
    const hand = new Hand().enrol();
    const recorded = kitFrom(hand.entries).seal?.number;
    hand.open("t1", "99999");
    expect(kitFrom(hand.entries).turnaround?.opened).toMatchObject({ sealSeen: "99999", sealOnRecord: recorded });
    hand.open("t2");
    const both = kitFrom(hand.entries);
    const opened = [both.turnaround, ...(both.otherTurnarounds ?? [])].map((one) => one?.opened.sealOnRecord);
    expect(opened).toEqual([recorded, recorded]);
  });

  it("keeps how the seal was read first beside the reading that opened the kit", () => {
    const hand = new Hand().enrol();
    const readings = { sealSeen: "00417", sealReadBefore: ["00471"] };
    hand.write("turnaround-opened", { turnaround: "t1", because: "routine", ...readings });
    expect(kitFrom(hand.entries).turnaround?.opened).toMatchObject(readings);
    expect(kitFrom(hand.entries).sealMismatch).toBeUndefined();
  });

  it("keeps answers that sort before the opening of their turnaround", () => {
    const hand = new Hand().enrol().open();
    const phone = hand.fork("phone");
    const answer = phone.write("step-answered", { turnaround: "t1", step: "open", answer: "seen" });
    const kit = kitFrom([...hand.entries, { ...answer, at: "2025-06-01T00:00:00Z" }]);
    expect(kit.turnaround?.answers["open"]?.answer).toBe("seen");
    expect(kit.turnaround?.opened.sealSeen).toBe("00417");
    expect(kit.otherTurnarounds).toBeUndefined();
  });
});
