import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayRemedy, sayWhyNotLivedWith } from "./remedy-words.ts";

const words = await fetchWords("en", "mending");

describe("remedies in words", () => {
  it("says what was mended", () => {
    expect(sayRemedy({ finding: "f", how: "mended", note: "Clamp tightened" }, 1, words)).toBe(
      "Mended: Clamp tightened",
    );
  });

  it("says with which part, how many, and its date", () => {
    const fitted = { item: "cells", fitted: "2026-03-14", printed: "2029-08", quantity: 2 };
    expect(sayRemedy({ finding: "f", how: "replaced", part: "Torch cell", quantity: 2, fitted }, 2, words)).toBe(
      "Replaced with 2 × Torch cell, printed 2029-08",
    );
  });

  it("says how many of how many were replaced, where others stayed in", () => {
    const fitted = { item: "cells", fitted: "2026-03-14", quantity: 1 };
    const one = { finding: "f", how: "replaced", part: "Torch cell", quantity: 1 } as const;
    expect(sayRemedy({ ...one, fitted }, 2, words)).toBe("1 of 2 replaced, with Torch cell");
    expect(sayRemedy({ ...one, fitted: { ...fitted, printed: "2029-08" } }, 2, words)).toBe(
      "1 of 2 replaced, with Torch cell, printed 2029-08",
    );
    expect(sayRemedy(one, 2, words), "only a part of it").toBe("Replaced with 1 × Torch cell");
  });

  it("says who lives with it, under which limit and until when", () => {
    const lived = { finding: "f", how: "lived-with", name: "Ada", limit: "daylight only", until: "2026-04" } as const;
    expect(sayRemedy(lived, 1, words)).toBe("Lived with by Ada until 30 April 2026: daylight only");
  });
});

describe("living with a finding", () => {
  it("is offered to those who may decide it, of a finding that does not ground", () => {
    expect(sayWhyNotLivedWith({ effect: "limits" }, "keeper", words)).toBeUndefined();
    expect(sayWhyNotLivedWith({ effect: "notes" }, "administrator", words)).toBeUndefined();
  });

  it("is not offered to others, and says who may", () => {
    expect(sayWhyNotLivedWith({ effect: "limits" }, "crew", words)).toContain("Only a keeper");
  });

  it("is offered to nobody of a finding that grounds", () => {
    expect(sayWhyNotLivedWith({ effect: "grounds" }, "keeper", words)).toBe(
      "It grounds the kit: mend or replace it, or close the kit as grounded.",
    );
  });
});
