import { describe, expect, it } from "vitest";
import { sayRuns } from "./record-proof.ts";

describe("the numbers of the lines behind a record", () => {
  it("are said by first and last where they follow one another", () => {
    expect(sayRuns([4, 5, 6, 9, 11, 12])).toBe("4 to 6, 9, 11 to 12");
    expect(sayRuns([7])).toBe("7");
    expect(sayRuns([])).toBe("");
    expect(sayRuns([12, 4, 11])).toBe("4, 11 to 12");
  });
});
