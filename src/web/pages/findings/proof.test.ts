import type { Pattern } from "#kit";
import { proofWanted, type Finding } from "#readiness";
import { describe, expect, it } from "vitest";
import { SAMPLE, sampleCheck, sampleMark, sampleTurnaround } from "#web/kit-view/sample.ts";
import { joined, judgeProof, proofBegun, proofBody, repeat, upTo } from "./proof.ts";

const checks = [sampleCheck("torch-lights"), sampleCheck("bands")];
const [torch, bands] = [checks[0]!, checks[1]!];
const half = repeat({}, torch, "seen", undefined);

describe("proving a remedy", () => {
  it("is right only once every check that finds the mode was seen right", () => {
    expect(judgeProof(checks, {})).toBe("incomplete");
    expect(judgeProof(checks, half)).toBe("incomplete");
    expect(judgeProof(checks, repeat(half, bands, "seen", { kind: "count", count: 4 }))).toBe("right");
  });

  it("is not right where one was wrong or could not be done", () => {
    expect(judgeProof(checks, repeat(half, bands, "wrong", undefined))).toBe("not-right");
    expect(judgeProof(checks, repeat(half, bands, "not-possible", undefined))).toBe("not-right");
  });

  it("proves nothing without checks", () => {
    expect(judgeProof([], {})).toBe("incomplete");
  });

  it("lets a later answer to the same check stand", () => {
    const corrected = repeat(repeat(half, bands, "wrong", undefined), bands, "seen", { kind: "count", count: 4 });
    expect(proofBody("f", checks, corrected)).toEqual({
      finding: "f",
      checks: [
        { check: "torch-lights", answer: "seen" },
        { check: "bands", answer: "seen", value: { kind: "count", count: 4 } },
      ],
    });
  });
});

describe("a proof over two lines on its page", () => {
  const lines = [
    { check: bands, step: "vent" },
    { check: torch, step: "torch" },
  ];
  const both = repeat(half, bands, "seen", { kind: "count", count: 4 });

  it("READY-43 asks the later line again once the earlier one is made again, and not the other way round", () => {
    expect(Object.keys(upTo(both, lines, bands))).toEqual(["bands"]);
    expect(Object.keys(upTo(both, lines, torch)).toSorted()).toEqual(["bands", "torch-lights"]);
  });

  it("READY-43 takes no later line as found right before an earlier one was made on the page", () => {
    const begun = { checks: lines, given: half };
    expect(Object.keys(joined(begun, {}))).toEqual(["torch-lights"]);
    const made = repeat({}, bands, "seen", { kind: "count", count: 4 });
    expect(Object.keys(joined(begun, made))).toEqual(["bands"]);
  });
});

describe("what a proof begins with", () => {
  const finding: Finding = {
    id: "f1",
    item: "torch",
    mode: "torch-dark",
    effect: "limits",
    photos: [],
    raised: sampleMark(1),
    remedies: [{ ...sampleMark(2), remedy: { finding: "f1", how: "mended", note: "New lamp." } }],
  };
  const pattern: Pattern = {
    ...SAMPLE,
    modes: SAMPLE.modes.map((mode) => (mode.id === "torch-dark" ? { ...mode, provedBy: ["bands", "cord"] } : mode)),
  };

  it("is every check that the act asks for, those the mode names beside its own too", () => {
    const { checks, given } = proofBegun(finding, pattern, undefined);
    expect(checks.map(({ check }) => check.id)).toEqual(proofWanted(finding, pattern).map(({ id }) => id));
    expect(checks.map(({ check, step }) => [check.id, step])).toContainEqual(["torch-lights", "torch"]);
    expect(given).toEqual({});
  });

  it("has what the open turnaround found right since the remedy, and neither what was before nor what was wrong", () => {
    const bandsSeen = { key: "vent/bands", value: { kind: "count", count: 4 } } as const;
    const opened = sampleTurnaround({ key: "vent/cord", answer: "seen" }, { key: "torch/torch-lights" }, bandsSeen);
    expect(proofBegun(finding, pattern, opened).given).toEqual({
      bands: { check: "bands", answer: "seen", value: { kind: "count", count: 4 } },
    });
    const wrong = sampleTurnaround({ key: "vent" }, { key: "vent/cord" }, { ...bandsSeen, answer: "wrong" });
    expect(proofBegun(finding, pattern, wrong).given).toEqual({});
  });
});
