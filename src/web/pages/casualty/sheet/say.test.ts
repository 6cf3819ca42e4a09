import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayList } from "./say.ts";

const words = await fetchWords("en", "casualtyTold");

describe("figures in words", () => {
  it("name the side of a list", () => {
    expect(sayList(-Math.PI / 18, words)).toBe("10° to port");
    expect(sayList(0, words)).toBe("no list");
  });
});
