import { describe, expect, it } from "vitest";
import { allCautions, cautionNamed, findCaution, isCautionId, SIGNAL_WORDS } from "./cautions.ts";

const GRAVITY = Object.keys(SIGNAL_WORDS);

describe("cautions", () => {
  it("have one id each", () => {
    const ids = allCautions().map((one) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("come gravest first", () => {
    const order = allCautions().map((one) => GRAVITY.indexOf(one.signal));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it.each(allCautions().map((one) => [one.id, one] as const))(
    "%s says what, consequence and how to avoid",
    (_, one) => {
      for (const text of [one.hazard, one.what, one.consequence, one.avoid]) expect(text.length).toBeGreaterThan(3);
      for (const text of [one.what, one.consequence, one.avoid]) expect(text).toMatch(/\.$/);
    },
  );

  it("never promise safety", () => {
    const words = allCautions().map((one) => `${one.what} ${one.consequence} ${one.avoid}`);
    for (const text of words) expect(text).not.toMatch(/\bsafe(ly|ty)?\b/i);
  });

  it("are found by id, and only by id", () => {
    expect(cautionNamed("carbon-monoxide").signal).toBe("DANGER");
    expect(findCaution("no-such")).toBeUndefined();
    expect(isCautionId("noise")).toBe(true);
    expect(isCautionId("Noise")).toBe(false);
  });

  it("keep NOTICE for what cannot hurt a person", () => {
    const notices = allCautions().filter((one) => one.signal === "NOTICE");
    expect(notices.map((one) => one.id)).toEqual(["never-run-dry", "estimate", "unit-manual-first"]);
  });
});
