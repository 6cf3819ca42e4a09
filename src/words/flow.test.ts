import { describe, expect, it } from "vitest";
import { flowFigure, sayFlow, type FlowStyle } from "./flow.ts";

describe("a flow in words", () => {
  it.each<[number, FlowStyle, string, string]>([
    [473, "estimate", "470 L/min", "120 US gpm"],
    [1234, "estimate", "1200 L/min", "330 US gpm"],
    [47.4, "estimate", "47 L/min", "13 US gpm"],
    [6, "estimate", "6.0 L/min", "1.6 US gpm"],
    [0, "estimate", "0 L/min", "0 US gpm"],
    [473, "measured", "473 L/min", "125 US gpm"],
  ])("%d L/min as %s", (litres, style, metric, us) => {
    const said = (["metric", "us"] as const).map((units) => sayFlow(litres / 60_000, units, style));
    expect(said).toEqual([metric, us].map((words) => words.replace(" ", "\u00a0")));
  });

  it("has the ends of a range go outward, and stay where they are round", () => {
    expect(flowFigure(0.473 / 60, "metric", Math.floor)).toBe("470");
    expect(flowFigure(0.473 / 60, "metric", Math.ceil)).toBe("480");
    expect([Math.floor, Math.ceil].map((round) => flowFigure(0.48 / 60, "metric", round))).toEqual(["480", "480"]);
  });
});
