import { ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "./sample-kit.ts";
import { sealingRefusals } from "./sealing.ts";
import type { KitState } from "../state.ts";
import { sayRefusal } from "./refusal.ts";

const LOOK = { turnaround: "t1", step: "look-pump", check: "turns" };

function refusals(hand: Hand, seal: string | undefined = "00500", others: readonly KitState[] = []): readonly string[] {
  const kit = kitOf(hand);
  const turnaround = kit.turnaround;
  if (!turnaround) throw new Error("No turnaround is open.");
  const sealing = { kit, turnaround, pattern: SAMPLE_PATTERN, allKits: [kit, ...others] };
  return sealingRefusals(seal === undefined ? sealing : { ...sealing, seal }).map((one) =>
    sayRefusal(one, ENGLISH.held),
  );
}

function done(): Hand {
  return new Hand().enrol().open().doAll();
}

describe("what refuses a seal", () => {
  it("is nothing when all is answered, put back, renewed and run", () => {
    expect(refusals(done())).toEqual([]);
    expect(refusals(done(), undefined)).toEqual([]);
  });

  it("READY-13 is every line unanswered, every item not put back, what is used once and what has not run", () => {
    expect(refusals(new Hand().enrol().open())).toEqual([
      "Not answered: line 1, Open the lid.",
      "Not answered: line 2, Turn the shaft.",
      "Not answered: line 2, Look at the paint.",
      "Not answered: line 3, Switch it on.",
      "Not answered: line 3, Read the date.",
      "Not answered: line 3, Measure the cells.",
      "Not answered: line 4, Start it.",
      "Not answered: line 5, Prime it.",
      "Not answered: line 6, Warm it up.",
      "Not answered: line 8, Put all back.",
      "Not answered: line 9, Fill with new fuel.",
      "Not answered: line 10, Close the lid.",
      "Not put back: Pump.",
      "Not put back: Torch.",
      "Not put back: Torch cells.",
      "Used once, not renewed: Desiccant.",
      "Its time has not run: line 4, Start it.",
      "Its time has not run: line 5, Prime it.",
      "Its time has not run: line 6, Warm it up.",
    ]);
  });

  it("names the check that is meant of a line with several, to go to", () => {
    const hand = new Hand().enrol().open();
    hand.write("step-answered", { ...LOOK, answer: "wrong" });
    const at = (step: string) => {
      const kit = kitOf(hand);
      const sealing = { kit, turnaround: kit.turnaround!, pattern: SAMPLE_PATTERN, allKits: [kit] };
      return sealingRefusals(sealing).flatMap((one) => (one.step === step && one.check ? [one.check] : []));
    };
    expect(at("look-pump")).toEqual(["paint", "turns"]);
    expect(at("look-torch")).toEqual(["light", "cell-date", "volts"]);
  });

  it("is a line answered wrong until a finding is raised at it, and the finding until it is proved", () => {
    const hand = done();
    hand.write("step-answered", { ...LOOK, answer: "wrong" });
    expect(refusals(hand)).toEqual(["Found wrong: raise a finding, or answer again: line 2, Turn the shaft."]);
    const raise = { finding: "f", item: "pump", mode: "pump-seized", effect: "grounds" as const, photos: [], ...LOOK };
    hand.write("finding-raised", raise);
    expect(refusals(hand)).toEqual(["Open finding grounds the kit: Pump: seized."]);
    hand.write("remedy-made", { finding: "f", how: "mended", note: "Freed." });
    expect(refusals(hand)).toHaveLength(1);
    hand.write("finding-proved", { finding: "f", checks: [{ check: "turns", answer: "seen" }] });
    expect(refusals(hand)).toEqual([]);
  });

  it("is a finding that grounds, also where a line says it is lived with; not one that limits", () => {
    const hand = done();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    hand.write("finding-raised", { finding: "g", item: "pump", mode: "pump-seized", effect: "grounds", photos: [] });
    const lived = { how: "lived-with" as const, name: "Ann", limit: "Gently.", until: "2026-03" };
    hand.write("remedy-made", { finding: "g", ...lived });
    expect(refusals(hand)).toEqual(["Open finding grounds the kit: Pump: seized."]);
  });

  it("is an item that could not be put back, unless a finding tells of it", () => {
    const hand = done();
    hand.write("step-answered", {
      turnaround: "t1",
      step: "stow",
      answer: "not-possible",
      why: "Pump is at the bench.",
    });
    expect(refusals(hand)).toEqual(["Not put back: Pump.", "Not put back: Torch.", "Not put back: Torch cells."]);
    for (const item of ["pump", "torch", "cells"]) {
      hand.write("finding-raised", {
        finding: item,
        item,
        mode: "other",
        effect: "notes",
        note: "Missing.",
        photos: [],
      });
    }
    expect(refusals(hand)).toEqual([]);
  });

  it("is a run that was stopped early, but not one that was not possible", () => {
    const hand = done();
    const started = "2026-01-10T09:00:00Z";
    hand.write("timer-stopped", { turnaround: "t1", step: "warm", started, seconds: 299, reached: false });
    expect(refusals(hand)).toEqual(["Its time has not run: line 6, Warm it up."]);
    hand.write("step-answered", { turnaround: "t1", step: "warm", answer: "not-possible", why: "No water." });
    expect(refusals(hand)).toEqual([]);
  });

  it("READY-14 is a seal number that is empty, on this kit's record, or was ever on another", () => {
    const other = kitOf(new Hand("tablet", 0, "2026-01-10", "k2").enrol().open("t9").doAll("t9").seal("00600", "t9"));
    expect(refusals(done(), " ")).toEqual(["Read the number of the new seal."]);
    expect(refusals(done(), "00417")).toEqual(["Seal 00417 was used before, on Kit 1."]);
    expect(refusals(done(), "00600", [other])).toEqual(["Seal 00600 is on Kit 1 already."]);
    expect(refusals(done(), "0417", [other])).toEqual([]);
  });

  it("is what two devices did differently, until it is settled", () => {
    const tablet = done();
    const phone = tablet.fork("phone");
    tablet.write("step-answered", { ...LOOK, answer: "wrong" });
    phone.write("step-answered", { ...LOOK, answer: "seen" });
    const kit = kitOf(tablet, phone);
    const sealing = { kit, turnaround: kit.turnaround!, pattern: SAMPLE_PATTERN, allKits: [kit], seal: "00500" };
    expect(sealingRefusals(sealing).map((reason) => reason.rule)).toContain("to-settle");
  });

  it("is what a turnaround set aside had found wrong, until a finding is raised", () => {
    const tablet = new Hand().enrol();
    const phone = tablet.fork("phone");
    tablet.open("t1").doAll("t1");
    phone.open("t2").write("step-answered", { ...LOOK, turnaround: "t2", answer: "wrong" });
    const both = kitOf(tablet, phone);
    const stands = tablet.entries.find((entry) => entry.kind === "turnaround-opened")!.id;
    const difference = both.toSettle.find((one) => one.what === "turnaround")!;
    const keeper = new Hand("desk", 59);
    keeper.write("settled", { entries: difference.entries, stands, reason: "It is the fuller one." });
    const wrong = () => {
      const kit = kitOf(tablet, phone, keeper);
      const sealing = { kit, turnaround: kit.turnaround!, pattern: SAMPLE_PATTERN, allKits: [kit], seal: "00500" };
      return sealingRefusals(sealing).map((one) => sayRefusal(one, ENGLISH.held));
    };
    expect(wrong()).toEqual(["Found wrong: raise a finding, or answer again: line 2, Turn the shaft."]);
    keeper.write("finding-raised", { finding: "f", item: "pump", mode: "other", effect: "notes", photos: [], ...LOOK });
    expect(wrong()).toEqual([]);
  });

  it("is a delivery measured too low, until a finding is raised at its step", () => {
    const hand = done();
    const how = { method: "timed-fill" as const, lift: 2, rise: 1, throttle: 1, flow: 0.002, flowUncertainty: 1e-4 };
    const low = { expected: 0.004, ratio: 0.5, verdict: "grounds" as const, readings: {} };
    hand.write("delivery-measured", { turnaround: "t1", step: "warm", ...how, ...low });
    expect(refusals(hand)).toEqual([
      "Found wrong: raise a finding, or answer again: line 6, Warm it up: delivers 50 % of what it should.",
    ]);
    const at = { turnaround: "t1", step: "warm" };
    const weak = { finding: "f", item: "pump", mode: "other", note: "Weak.", photos: [] };
    hand.write("finding-raised", { ...weak, ...at, effect: "limits", limit: "Half delivery." });
    expect(refusals(hand)).toEqual([]);
  });
});
