import { parseQuantity, parseSpan } from "#base";
import { allSteps, checkNamed, stepNamed } from "#kit";
import { describe, expect, it } from "vitest";
import practice from "../references/common-practice.json" with { type: "json" };
import { shippedPattern } from "./shipped-patterns.ts";

const pattern = shippedPattern("brinnet-450@2");

function fact(id: string) {
  const found = practice.facts.find((one) => one.id === id);
  if (!found) throw new Error(`no fact ${id}`);
  return found.value;
}

function seconds(id: string): number {
  return parseQuantity(String(fact(id)), "time");
}

describe("common practice, as the petrol kit holds it", () => {
  it("vents the inner wrapping two minutes before leaning in", () => {
    expect(stepNamed(pattern, "vent")?.timer).toEqual({ kind: "wait", atLeast: seconds("cp-vent") });
  });

  it("wants water within a minute of priming", () => {
    expect(stepNamed(pattern, "prime-pump")?.timer).toEqual({ kind: "prime", atMost: seconds("cp-prime") });
    expect(checkNamed(pattern, "prime-time")).toMatchObject({ kind: "timed", atMost: seconds("cp-prime") });
  });

  it("gives the engine six pulls, by recoil and by spare cord", () => {
    const pulls = allSteps(pattern).flatMap((step) => (step.timer?.kind === "pulls" ? step.timer.atMost : []));
    expect(pulls).toEqual([fact("cp-pulls"), fact("cp-pulls")]);
  });

  it("warms five minutes and takes five through the throttle range", () => {
    expect(stepNamed(pattern, "warm")?.timer).toMatchObject({ kind: "run", atLeast: seconds("cp-warm") });
    expect(stepNamed(pattern, "throttle-range")?.timer).toMatchObject({ kind: "run", atLeast: seconds("cp-range") });
  });

  it("carries 15 ft of suction and 25 ft of discharge hose", () => {
    expect(pattern.hydraulics?.suction?.length).toBe(parseQuantity(String(fact("cp-suction")), "length"));
    expect(pattern.hydraulics?.discharge.length).toBe(parseQuantity(String(fact("cp-discharge")), "length"));
  });

  it("renews desiccant and wrappings at each restow", () => {
    const restow = pattern.stages.find((stage) => stage.id === "restow")?.steps ?? [];
    const renewed = restow.flatMap((step) => step.renews);
    for (const id of fact("cp-renewed") as string[]) {
      expect(renewed).toContain(id);
      expect(pattern.items.find((item) => item.id === id)?.life).toEqual({ kind: "single-use" });
    }
  });
});

describe("NWCG PMS 448 refurbishment standard: date last tested", () => {
  it("proof run no older than 12 months", () => {
    expect(pattern.policy.proofRun).toEqual(parseSpan(String(fact("cp-proof"))));
  });
});

describe("Fishermen's News, Coast Guard dewatering pump operations: fuel changed every 90 days", () => {
  it("petrol no older than 3 months", () => {
    expect(pattern.items.find((item) => item.id === "fuel")?.life).toEqual({
      kind: "fitted",
      span: parseSpan(String(fact("cp-fuel"))),
    });
  });
});
