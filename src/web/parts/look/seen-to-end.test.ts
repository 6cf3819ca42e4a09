import { describe, expect, it } from "vitest";
import { unseenOf } from "./seen-to-end.ts";

const standing = (...bottoms: readonly number[]) => bottoms.map((bottom) => ({ bottom }));

describe("a list longer than the screen", () => {
  it("has members that nobody saw while they end below the screen or behind the bar over it", () => {
    expect(unseenOf(standing(200, 500, 699, 900), 700)).toBe(1);
    expect(unseenOf(standing(200, 500, 690, 900), 600)).toBe(2);
  });

  it("is seen to its end where all of it fits, to the pixel that rounding may cost, and where it was scrolled past", () => {
    expect(unseenOf(standing(200, 700.6), 700)).toBe(0);
    expect(unseenOf(standing(-300, -20), 700)).toBe(0);
    expect(unseenOf([], 700)).toBe(0);
  });
});
