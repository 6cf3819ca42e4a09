import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { compareSeal, judgeTyping, NO_SEAL } from "./seal-reading.ts";

const words = await fetchWords("en", "act");

describe("the seal read", () => {
  it("agrees with the record but for blanks and letter case", () => {
    expect(compareSeal(" dk 00417", "DK00417", words).agrees).toBe(true);
  });

  it("keeps leading noughts apart", () => {
    expect(compareSeal("417", "00417", words)).toMatchObject({
      agrees: false,
      words: "You read 417. That is not what the record says.",
    });
  });

  it("differs where no seal was found on a kit with one on record", () => {
    expect(compareSeal(NO_SEAL, "00417", words)).toMatchObject({ agrees: false });
    expect(compareSeal(NO_SEAL, "00417", words).words).not.toContain("00417");
    expect(compareSeal(NO_SEAL, undefined, words)).toMatchObject({ agrees: true });
  });
});

describe("a new seal typed twice", () => {
  it("takes the same number twice and nothing else", () => {
    expect(judgeTyping("00420", "00420 ", words)).toBeUndefined();
    expect(judgeTyping("00420", "00402", words)).toBe("The two differ: 00420 and 00402.");
    expect(judgeTyping("", "00420", words)).toContain("Write the new seal");
    expect(judgeTyping("00420", "", words)).toContain("once more");
  });
});
