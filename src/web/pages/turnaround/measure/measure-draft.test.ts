import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { deliveryQuestion } from "#questions";
import { kindSchemas } from "#readiness";
import { loadPattern } from "#kit";
import { readFileSync } from "node:fs";
import { fetchWords } from "#words";
import { boxesOf, NO_DRAFT, readMeasure, siOf, type Box, type MeasureDraft } from "./measure-draft.ts";
import { effectOf, ratioAsk, sayMeasured, sayRatio, sayVerdict } from "./measure-words.ts";
import { listLines } from "#web/act/lines.ts";

const words = await fetchWords("en", "turnaroundMeasure");

const shipped = (name: string) =>
  loadPattern(
    readFileSync(join(import.meta.dirname, "../../../../../patterns", `${name}.yaml`), "utf8"),
    `${name}.yaml`,
  );
const petrol = shipped("brinnet-450@2");
const electric = shipped("ossel-200@2");

const expected = deliveryQuestion.answer(
  { kit: "x", suction: { lift: 2 }, discharge: { rise: 1 } },
  { patterns: () => petrol },
).flow;

function filled(boxes: Partial<Record<Box, string>>, more: Partial<MeasureDraft> = {}): MeasureDraft {
  const typed = Object.entries(boxes).map(([box, text]) => [box, { typed: text, quantity: text }]);
  return { method: "timed-fill", hoses: "packed", speed: "full", boxes: Object.fromEntries(typed), ...more };
}

const drum = (share: number) => {
  const seconds = `${(0.2 / (share * expected)).toFixed(2)} s`;
  return filled({ lift: "2 m", rise: "1 m", volume: "200 L", first: seconds, second: seconds });
};

describe("a measurement being entered", () => {
  it("starts with nothing in it, and says what is missing one thing at a time", () => {
    expect(readMeasure(petrol, NO_DRAFT)).toEqual({ kind: "incomplete", missing: "needHoses" });
    const noLift = filled({ rise: "1 m", volume: "200 L", first: "25 s" });
    expect(readMeasure(petrol, noLift)).toEqual({ kind: "incomplete", missing: "needLift" });
    const noTime = filled({ lift: "2 m", rise: "1 m", volume: "200 L" });
    expect(readMeasure(petrol, noTime)).toEqual({ kind: "incomplete", missing: "needFill" });
  });

  it("asks for lengths only where the hoses were others, and for no lift where the pump stands in the water", () => {
    expect(boxesOf(petrol, filled({}))).toEqual(["lift", "rise", "volume", "first", "second"]);
    expect(boxesOf(petrol, filled({}, { hoses: "other" }))).toContain("suctionLength");
    expect(boxesOf(electric, filled({}, { hoses: "other" }))).toEqual([
      "rise",
      "dischargeLength",
      "volume",
      "first",
      "second",
    ]);
  });

  it("takes a reading in any unit, and none that cannot be read", () => {
    expect(siOf(filled({ volume: "55 US gal" }), "volume")).toBeCloseTo(0.208198, 6);
    expect(siOf(filled({ volume: "lots" }), "volume")).toBeUndefined();
  });

  it.each([
    [1, "as-expected", undefined],
    [0.83, "noted", "notes"],
    [0.5, "grounds", "grounds"],
  ] as const)("comes at %d of what is expected to %s", (share, verdict, effect) => {
    const measuring = readMeasure(petrol, drum(share));
    expect(measuring.kind === "measured" && measuring.answer.verdict).toBe(verdict);
    expect(effectOf(verdict)).toBe(effect);
  });

  it("says so where one quick fill is too rough to judge by", () => {
    const rough = filled({ lift: "2 m", rise: "1 m", volume: "10 L", first: `${0.01 / (0.8 * expected)} s` });
    const measuring = readMeasure(petrol, rough);
    expect(measuring.kind === "measured" && measuring.answer.verdict).toBe("unclear");
  });

  it("writes down a body that the log takes, with every reading as it was typed", () => {
    const measuring = readMeasure(petrol, drum(0.96));
    if (measuring.kind !== "measured") throw new Error("not measured");
    const body = { turnaround: "t1", step: "measure-delivery", ...measuring.body };
    expect(kindSchemas["delivery-measured"].parse(body)).toEqual(body);
    expect(body.readings["volume"]).toEqual({ kind: "quantity", si: 0.2, dimension: "volume", text: "200 L" });
    expect(Object.keys(body.readings)).toEqual(["volume", "first", "second"]);
    expect([body.suctionLength, body.dischargeLength]).toEqual([4.572, 7.62]);
  });

  it("passes on what stands against the figures", () => {
    const impossible = filled({ lift: "2 m", rise: "1 m", volume: "20 m³", first: "30 s" });
    expect(readMeasure(petrol, impossible).kind).toBe("refused");
  });

  it("judges a vacuum at the running inlet beside it", () => {
    const draft = drum(0.5);
    const beside = { ...draft, boxes: { ...draft.boxes, beside: { typed: "25", quantity: "25 inHg" } } };
    const measuring = readMeasure(petrol, beside);
    expect(measuring.kind === "measured" && measuring.answer.suction?.kind).toBe("hose-side");
  });
});

describe("what a measurement is called", () => {
  const measured = { flow: 0.0075, flowUncertainty: 0.00015, expected: 0.0078, ratio: 0.9615 };

  it("carries its doubt, in the person's units", () => {
    expect(sayMeasured(measured, { units: "metric", words })).toBe("450\u00a0L/min, give or take 18\u00a0L/min");
    expect(sayMeasured(measured, { units: "us", words })).toBe("119\u00a0US gpm, give or take 4.8\u00a0US gpm");
    expect(sayRatio(measured, { units: "metric", words })).toBe("96\u00a0% of the 468\u00a0L/min expected");
  });

  it("names the pattern's limit in its verdict", () => {
    expect(sayVerdict({ verdict: "noted", ratio: 0.8 }, petrol, words)).toContain("90\u00a0%");
    expect(sayVerdict({ verdict: "grounds", ratio: 0.5 }, petrol, words)).toContain("75\u00a0%");
  });

  it("questions a delivery above what the curve gives, and calls it no rough measurement", () => {
    expect(sayVerdict({ verdict: "unclear", ratio: 1.4 }, petrol, words)).toMatch(
      /^More than this pump can give: check lift/,
    );
    expect(sayVerdict({ verdict: "unclear", ratio: 0.8 }, petrol, words)).toMatch(/^Too rough to tell/);
  });

  it("finds the check that asks for it in both shipped patterns", () => {
    for (const [pattern, check] of [
      [petrol, "delivery-measured"],
      [electric, "pump-delivery"],
    ] as const) {
      const line = listLines(pattern).find(({ step }) => step.measuresDelivery)!;
      expect(ratioAsk(line)?.check.id).toBe(check);
    }
  });
});
