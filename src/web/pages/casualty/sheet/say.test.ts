import { describe, expect, it } from "vitest";
import { sayChance, sayFlow, sayLevel, sayLevelAbout, sayList, sayMinutes } from "./say.ts";

describe("figures in words", () => {
  it("are no finer than they are known", () => {
    expect(sayMinutes(2532)).toBe("40\u00a0min");
    expect(sayMinutes(130)).toBe("2\u00a0min");
    expect(sayMinutes(9000)).toBe("2\u00a0h 30\u00a0min");
    expect(sayMinutes(1)).toBe("1\u00a0min");
  });

  it("are two at most of a level that is estimated, and all there are of one that was read", () => {
    expect([0.054, 0.544, 1.12].map((si) => sayLevelAbout(si, "metric"))).toEqual([
      "5\u00a0cm",
      "54\u00a0cm",
      "110\u00a0cm",
    ]);
    expect(sayLevel(1.12, "metric")).toBe("112\u00a0cm");
  });

  it("never promise", () => {
    expect(sayChance(1)).toBe("more than 99 in 100");
    expect(sayChance(0)).toBe("less than 1 in 100");
    expect(sayChance(0.61)).toBe("61 in 100");
  });

  it("name the side of a list", () => {
    expect(sayList(-Math.PI / 18)).toBe("10° to port");
    expect(sayList(0)).toBe("no list");
  });

  it("come in the reader's own units", () => {
    expect(sayLevel(0.54, "metric")).toBe("54\u00a0cm");
    expect(sayLevel(0.54, "us")).toBe("21\u00a0in");
    expect(sayFlow(0.2 / 60, "metric")).toBe("200\u00a0L/min");
    expect(sayFlow(0.2 / 60, "us")).toMatch(/^53\u00a0/);
  });
});
