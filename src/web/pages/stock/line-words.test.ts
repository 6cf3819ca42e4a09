import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayCountedOn, sayKeeps, sayShelf } from "./line-words.ts";

const [ofPart, words] = await Promise.all([fetchWords("en", "stockPart"), fetchWords("en", "stock")]);

describe("how long a part keeps", () => {
  it("is said as it was saved, without end too", () => {
    expect(sayKeeps({ printed: false }, ofPart)).toBe("Without end");
    expect(sayKeeps({ printed: false, shelfLife: "24 months" }, ofPart)).toBe("24 months");
    expect(sayKeeps({ printed: true }, ofPart)).toBe("to the date printed on it");
  });
});

describe("a shelf on a device whose lines are still to come", () => {
  it("has no count and no day yet: neither 0 nor never", () => {
    expect(sayShelf({ count: 0, usable: 0, least: 0 }, true, words)).toBe("not here yet");
    expect(sayShelf({ count: 2, usable: 1, least: 3 }, true, words)).toBe("not here yet");
    expect(sayCountedOn(undefined, true, words)).toBe("not here yet");
    expect(sayCountedOn("2026-05-01", true, words)).toBe("not here yet");
  });

  it("has both once all are here", () => {
    expect(sayShelf({ count: 0, usable: 0, least: 0 }, false, words)).toBe("0");
    expect(sayShelf({ count: 4, usable: 4, least: 2 }, false, words)).toBe("4");
    expect(sayCountedOn(undefined, false, words)).toBe("never");
    expect(sayCountedOn("2026-05-01", false, words)).toBe("2026-05-01");
  });
});
