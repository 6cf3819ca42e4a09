import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayKeeps } from "./line-words.ts";

const words = await fetchWords("en", "stockPart");

describe("how long a part keeps", () => {
  it("is said as it was saved, without end too", () => {
    expect(sayKeeps({ printed: false }, words)).toBe("Without end");
    expect(sayKeeps({ printed: false, shelfLife: "24 months" }, words)).toBe("24 months");
    expect(sayKeeps({ printed: true }, words)).toBe("to the date printed on it");
  });
});
