import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { BOAT } from "#web/pages/board/sample-kits.ts";
import { SAMPLE } from "#web/kit-view/sample.ts";
import { isStepLine, tellEntry } from "./entry-telling.ts";

const words = await fetchWords("en", "telling");

const telling = { pattern: SAMPLE, places: [BOAT], words };
const tell = (kind: string, body: unknown) => tellEntry({ kind, body }, telling);

describe("an entry told", () => {
  it("names lines, items, modes and places", () => {
    expect(tell("step-answered", { step: "torch", check: "torch-lights", answer: "wrong", turnaround: "t" })).toBe(
      "line 2, Look at torch-lights, found wrong",
    );
    expect(tell("item-fitted", { item: "cells", quantity: 2, printed: "2027-03", fitted: "2026-11-25" })).toBe(
      "Torch cells, 2, printed Mar 2027",
    );
    expect(tell("finding-raised", { item: "torch", mode: "torch-dark", photos: [] })).toBe("Torch does not light");
    expect(tell("kit-moved", { to: "boat" })).toBe("to Boat");
  });

  it("says what was read of a seal, and where none was found", () => {
    expect(tell("mustered", { sealSeen: "00417", containerSound: true })).toBe("seal read 00417, container sound");
    expect(tell("turnaround-opened", { sealSeen: "" })).toBe("no seal found");
    expect(tell("turnaround-opened", { sealSeen: "00417", sealReadBefore: ["00471", ""] })).toBe(
      "seal read 00417, before that seal read 00471, before that no seal found",
    );
  });

  it("says how a kit left and in what it came back", () => {
    const body = { to: "the ketch Oriel", method: "line", sealBroken: false };
    expect(tell("handed-over", body)).toBe("to the ketch Oriel, on a line, seal whole");
    expect(tell("handed-over", { ...body, back: "2027-03-16" })).toContain("expected back by 16 Mar 2027");
    expect(tell("returned", { exposure: ["salt", "oil"] })).toBe("seen salt, oil");
    const settled = { returned: "r", name: "fuel can", how: "came-back" };
    expect(tell("lent-settled", settled)).toBe("fuel can, came back");
    expect(tell("lent-settled", { ...settled, how: "given-up", count: 2 })).toBe("fuel can (2), given up");
  });

  it("says days as people say them", () => {
    expect(tell("turnaround-told", { day: "2025-03-04", result: "Sealed" })).toBe("4 Mar 2025, Sealed");
    const openings = [{ week: "2027-03-15" }, { week: "2027-06-14" }];
    expect(tell("openings-planned", { openings })).toBe("weeks of 15 Mar 2027, 14 Jun 2027");
    expect(tell("planted-removed", { drill: "d", plant: "p", fault: 1 })).toBe("fault 1 of those planted");
  });

  it("says nothing of a kind this version does not know", () => {
    expect(tell("kit-blessed", { by: "somebody" })).toBe("");
  });

  it("keeps lines that a turnaround's record shows apart from the rest", () => {
    expect(isStepLine({ kind: "step-answered", body: {} })).toBe(true);
    expect(isStepLine({ kind: "item-fitted", body: { turnaround: "t" } })).toBe(true);
    expect(isStepLine({ kind: "item-fitted", body: {} })).toBe(false);
    expect(isStepLine({ kind: "sealed", body: {} })).toBe(false);
  });
});
