import { describe, expect, it } from "vitest";
import { sampleCheck } from "#web/kit-view/sample.ts";
import { judgeProof, proofBody, repeat } from "./proof.ts";

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
