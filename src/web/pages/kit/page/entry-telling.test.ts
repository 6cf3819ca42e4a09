import { describe, expect, it } from "vitest";
import { BOAT } from "../../board/sample-kits.ts";
import { SAMPLE } from "../../../kit-view/sample.ts";
import { isStepLine, tellEntry } from "./entry-telling.ts";

const telling = { pattern: SAMPLE, places: [BOAT] };
const tell = (kind: string, body: unknown) => tellEntry({ kind, body }, telling);

describe("an entry told", () => {
  it("names lines, items, modes and places", () => {
    expect(tell("step-answered", { step: "torch", check: "torch-lights", answer: "wrong", turnaround: "t" })).toBe(
      "line 2, Look at torch-lights, found wrong",
    );
    expect(tell("item-fitted", { item: "cells", quantity: 2, printed: "2027-03", fitted: "2026-11-25" })).toBe(
      "Torch cells, 2, printed 2027-03",
    );
    expect(tell("finding-raised", { item: "torch", mode: "torch-dark", photos: [] })).toBe("Torch does not light");
    expect(tell("kit-moved", { to: "boat" })).toBe("to Boat");
  });

  it("says what was read of a seal, and where none was found", () => {
    expect(tell("mustered", { sealSeen: "00417", containerSound: true })).toBe("seal read 00417, container sound");
    expect(tell("turnaround-opened", { sealSeen: "" })).toBe("no seal found");
  });

  it("says how a kit left and in what it came back", () => {
    const body = { to: "the ketch Oriel", method: "line", sealBroken: false };
    expect(tell("handed-over", body)).toBe("to the ketch Oriel, by line, seal whole");
    expect(tell("returned", { exposure: ["salt", "oil"] })).toBe("seen salt, oil");
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
