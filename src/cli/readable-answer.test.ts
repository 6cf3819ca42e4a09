import { describe, expect, it } from "vitest";
import { readableAnswer } from "./readable-answer.ts";

const SPREAD = { p05: 0.00109, p25: 0.0021, p50: 0.003, p75: 0.004, p95: 0.0059 };
const SCHEMA = {
  properties: {
    flow: { description: "Delivery [m³/s]" },
    inflow: { description: "Inflow [m³/s]" },
    level: { description: "Level [m]" },
    fan: { description: "Level to come [m]", items: { properties: { at: { description: "When [s]" } } } },
    by: { description: "area [m²], startLevel and levelNow [m]", additionalProperties: {} },
  },
};

function linesOf(answer: object): readonly string[] {
  return readableAnswer(answer, SCHEMA).map((line) => line.replaceAll("\u00a0", " "));
}

const estimated = (answer: object) => linesOf({ ...answer, cautions: ["estimate"] }).slice(0, -2);

describe("figures of an estimate", () => {
  it.each<[object, readonly string[]]>([
    [{ flow: 0.0096917 }, ["flow: 580 L/min"]],
    [{ inflow: SPREAD }, ["inflow: 180 L/min (65 to 350)"]],
    [{ chance: 0.82421 }, ["chance: 0.82"]],
    [{ chance: 0.99927 }, ["chance: over 0.99"]],
    [{ kits: 12345 }, ["kits: 12345"]],
    [{ level: 5.3e-15 }, ["level: 0 mm"]],
    [{ by: { area: SPREAD } }, ["by:", "  area: 30 cm² (11 to 59)"]],
    [{ by: { startLevel: { p05: 0.5, p50: 0.512, p95: 0.53 } } }, ["by:", "  startLevel: 0.51 m (0.50 to 0.53)"]],
    [{ fan: [{ at: 1110, p05: 0.44, p50: 0.4886, p95: 0.53 }] }, ["fan:", "  - at 19 min, 0.49 m (0.44 to 0.53)"]],
  ])("%j are told to two figures, counts as they are", (answer, lines) => {
    expect(estimated(answer)).toEqual(lines);
  });
});

describe("figures of anything else", () => {
  it("are told as computed, in the unit that people use too", () => {
    expect(linesOf({ flow: 0.0096917, level: 1.23456 })).toEqual([
      "flow: 0.0096917 m³/s (582 L/min)",
      "level: 1.2346 m",
    ]);
  });
});

describe("figures whose unit the answer itself says", () => {
  const schema = {
    properties: {
      age: { description: "Age [unit]" },
      rate: { description: "Failures [1/unit]" },
      bare: {},
      at: { description: "When [instant]" },
    },
  };
  const said = (answer: object) => readableAnswer(answer, schema).map((line) => line.replaceAll("\u00a0", " "));

  it("have it beside each, and years beside seconds", () => {
    expect(said({ unit: "runs", age: 12, rate: 2, bare: 3 })).toEqual([
      "unit: runs",
      "age: 12 runs",
      "rate: 2 1/runs",
      "bare: 3",
    ]);
    expect(said({ unit: "runs", at: 12 })).toEqual(["unit: runs", "at: 12 runs"]);
    expect(said({ unit: "s", age: 94_672_800 })).toEqual(["unit: s", "age: 9.4673e+7 s (3 years)"]);
  });

  it("instants counted from a day are told as days, lengths of time are not", () => {
    expect(said({ unit: "s", countedFrom: "1970-01-01", at: 1_772_496_000, age: 604_800 })).toEqual([
      "unit: s",
      "countedFrom: 1970-01-01",
      "at: 3 March 2026",
      "age: 604800 s (7 days)",
    ]);
  });
});
