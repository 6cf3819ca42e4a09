import { describe, expect, it } from "vitest";
import { sayPercent } from "#words";
import { sayCounted, sayKappa } from "./index.ts";

describe("words of a visit", () => {
  it("never round to nothing or everything what is only near it", () => {
    expect([0, 0.001, 0.5, 0.999, 1].map((share) => sayPercent(share).replace("\u00a0", " "))).toEqual([
      "0 %",
      "under 1 %",
      "50 %",
      "over 99 %",
      "100 %",
    ]);
  });

  it("tell a share with where it may lie, and why kappa cannot be told", () => {
    expect(sayCounted({ count: 19, of: 20, interval: [0.764, 0.991] }).replaceAll("\u00a0", " ")).toBe(
      "19 of 20, 95 % (76 % to 99 %)",
    );
    expect(sayKappa({ kind: "told", kappa: 0.4, standardError: 0.127, interval: [0.15, 0.65] })).toMatch(
      /^Kappa 0\.40, standard error 0\.13 \(0\.15 to 0\.65\)/,
    );
    expect(sayKappa({ kind: "cannot-tell", because: "one-word-only" })).toContain("cannot be told");
    expect(sayKappa({ kind: "cannot-tell", because: "nothing-compared" })).toContain("nothing was compared");
  });
});
