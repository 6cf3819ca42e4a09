import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { entryKinds, judgeBody, validateBody } from "./kind-schemas.ts";
import { isKitKind } from "../kit/kit-fold.ts";
import { kitFolds } from "../registry/kit.ts";
import { Hand } from "../kit/sample-kit.ts";

const VISIT = {
  places: ["north"],
  chance: 0.9,
  share: 0.1,
  kits: 1,
  seed: "0123456789abcdef",
  of: [{ kit: "k", turnaround: "t", pattern: "p@1" }],
};
const QUALIFICATION = { name: "Q", ties: [{ to: "sheet" }], every: "1 year", seenBy: "holders", alone: "never" };
const ANSWER = { turnaround: "t1", step: "s", answer: "seen" };
const PHOTO = { hash: "a".repeat(64), mime: "image/jpeg", bytes: 200_000, width: 1600, height: 1200 };

function fieldsOf(kind: string, body: unknown): readonly string[] {
  return judgeBody({ kind, body }).map((fault) => `${fault.code} ${fault.field}`);
}

describe("what each kind of entry may say", () => {
  it("takes what the app writes", () => {
    for (const entry of new Hand().enrol().open().doAll().seal().entries) expect(judgeBody(entry)).toEqual([]);
  });

  it("gives the body back, or throws with every fault", () => {
    expect(validateBody({ kind: "kit-renamed", body: { name: "Kit 4" } })).toEqual({ name: "Kit 4" });
    try {
      validateBody({ kind: "sealed", body: { seal: "", extra: 1 } });
      expect.unreachable();
    } catch (thrown) {
      expect(isInputError(thrown) && thrown.faults.map((fault) => fault.field)).toEqual([
        "body.turnaround",
        "body.seal",
        "body",
      ]);
    }
  });

  it.each<[string, unknown, string]>([
    ["no-such-kind", {}, "RD-101 kind"],
    ["toString", {}, "RD-101 kind"],
    ["kit-renamed", null, "RD-102 body"],
    ["kit-renamed", { name: "x".repeat(81) }, "RD-102 body.name"],
    ["kit-renamed", { name: "  " }, "RD-102 body.name"],
    ["visit-begun", { ...VISIT, places: [] }, "RD-102 body.places"],
    ["visit-begun", { ...VISIT, chance: 0 }, "RD-102 body.chance"],
    ["visit-begun", { ...VISIT, chance: 1 }, "RD-102 body.chance"],
    ["visit-begun", { ...VISIT, share: 1.2 }, "RD-102 body.share"],
    ["visit-begun", { ...VISIT, seed: "HEADS" }, "RD-102 body.seed"],
    ["line-reexamined", { kit: "k", step: "s", check: "c", answer: "not-possible" }, "RD-102 body.why"],
    ["qualification-set", { ...QUALIFICATION, every: "9999 years" }, "RD-102 body.every"],
    ["qualification-set", { ...QUALIFICATION, every: "101 years" }, "RD-102 body.every"],
    ["qualification-set", { ...QUALIFICATION, every: "soon" }, "RD-102 body.every"],
    ["step-answered", { ...ANSWER, answer: "checked" }, "RD-102 body.answer"],
    ["step-answered", { ...ANSWER, answer: "not-possible" }, "RD-102 body.why"],
    [
      "step-answered",
      { ...ANSWER, value: { kind: "quantity", si: Infinity, dimension: "time", text: "1" } },
      "RD-102 body.value.si",
    ],
    [
      "step-answered",
      { ...ANSWER, value: { kind: "quantity", si: 1, dimension: "luck", text: "1" } },
      "RD-102 body.value.dimension",
    ],
    ["step-answered", { ...ANSWER, photos: Array.from({ length: 21 }, () => PHOTO) }, "RD-102 body.photos"],
    ["step-answered", { ...ANSWER, photos: [{ ...PHOTO, mime: "image/svg+xml" }] }, "RD-102 body.photos.0.mime"],
    ["pulls-counted", { turnaround: "t", step: "s", pulls: 2.5, started: true }, "RD-102 body.pulls"],
    [
      "timer-stopped",
      { turnaround: "t", step: "s", started: "noon", seconds: 1, reached: true },
      "RD-102 body.started",
    ],
    ["item-fitted", { item: "cells", fitted: "2026-02-30", quantity: 1 }, "RD-102 body.fitted"],
    ["finding-raised", { finding: "f", item: "i", mode: "other", effect: "notes", photos: [] }, "RD-102 body.note"],
    ["remedy-made", { finding: "f", how: "lived-with", name: "Ann", limit: "Gently." }, "RD-102 body.until"],
    ["remedy-made", { finding: "f", how: "ignored" }, "RD-102 body.how"],
    ["finding-proved", { finding: "f", checks: [] }, "RD-102 body.checks"],
    ["policy-set", { proofRun: "0 days" }, "RD-102 body.proofRun"],
    ["policy-set", { proofRun: "soon" }, "RD-102 body.proofRun"],
    ["policy-set", { currency: "euro" }, "RD-102 body.currency"],
    ["place-set", { name: "North", strength: 2, zone: "Nowhere/Land" }, "RD-102 body.zone"],
    ["person-joined", { name: "Ann", role: "captain" }, "RD-102 body.role"],
    ["step-answered", { ...ANSWER, step: "constructor" }, "RD-102 body.step"],
    ["item-fitted", { item: "toString", fitted: "2026-02-01", quantity: 1 }, "RD-102 body.item"],
  ])("refuses %s %j", (kind, body, fault) => {
    expect(fieldsOf(kind, body)).toContain(fault);
  });

  it("tells a few faults of very many", () => {
    const items = Array.from({ length: 150 }, () => ({ item: "" }));
    expect(fieldsOf("kit-enrolled", { name: "K", serial: "S", items })).toHaveLength(20);
  });

  it("knows a kit's kinds from the rest", () => {
    const kits = entryKinds.filter((kind) => isKitKind(kind));
    expect(kits.toSorted()).toEqual(Object.keys(kitFolds).toSorted());
    expect(kits).not.toContain("struck");
  });
});
