import { fetchWords } from "#words";
import { sampleKit } from "#web/pages/board/sample-kits.ts";
import { describe, expect, it } from "vitest";
import { sayStillOut } from "./still-out.ts";

const words = { keep: await fetchWords("en", "keep"), standing: await fetchWords("en", "standing") };

const mark = { at: "2026-11-25T12:00:00Z", by: "ann", entry: "e1", device: "d" };

describe("what is out of a kit that is to be retired", () => {
  it("is nothing where all of it is here", () => {
    expect(sayStillOut(sampleKit("1"), words)).toEqual([]);
  });

  it("is the kit itself with what was lent with it, where it is away", () => {
    const lent = [{ name: "fuel can", count: 2 }];
    expect(sayStillOut(sampleKit("1", { custody: { ...mark, kind: "away", to: "her", lent } }), words)).toEqual([
      "The kit itself is with her, and with it: fuel can (2).",
    ]);
    expect(sayStillOut(sampleKit("1", { custody: { ...mark, kind: "away", to: "her" } }), words)).toEqual([
      "The kit itself is with her.",
    ]);
  });

  it("is what did not come back with it", () => {
    const lentOut = [{ ...mark, name: "fuel can", count: 1, to: "her", isCounted: true }];
    expect(sayStillOut(sampleKit("1", { lentOut }), words)).toEqual(["Lent to her, not back: fuel can (1)."]);
  });
});
