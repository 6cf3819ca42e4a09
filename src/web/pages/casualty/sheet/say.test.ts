import { describe, expect, it } from "vitest";
import { sayList } from "./say.ts";

describe("figures in words", () => {
  it("name the side of a list", () => {
    expect(sayList(-Math.PI / 18)).toBe("10° to port");
    expect(sayList(0)).toBe("no list");
  });
});
