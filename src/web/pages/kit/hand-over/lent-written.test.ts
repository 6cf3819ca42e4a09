import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { readLent, sayLentRead } from "./lent-written.ts";

const words = await fetchWords("en", "handOver");

describe("what is written of things lent", () => {
  it("is one thing a line, its number first, or one of it", () => {
    expect(readLent("2 fuel cans\n\n 3 x hose, 10 m \nfunnel", words)).toEqual({
      lent: [
        { name: "fuel cans", count: 2 },
        { name: "hose, 10 m", count: 3 },
        { name: "funnel", count: 1 },
      ],
    });
    expect(readLent(" \n", words)).toEqual({ lent: [] });
  });

  it("takes figures that are part of a name for that, and says back how each line was read", () => {
    const { lent } = readLent("12V lamp\n2.5 inch hose\n3x strainer\n2 × cans", words);
    expect(sayLentRead(lent)).toBe("12V lamp (1), 2.5 inch hose (1), strainer (3), cans (2)");
  });

  it.each([
    ["2", "Say what it is after the number."],
    ["-2 cans", "cans: a number from 1 to 99."],
    ["1234567 cans", "cans: a number from 1 to 99."],
    ["0 cans", "cans: a number from 1 to 99."],
    ["100 cans", "cans: a number from 1 to 99."],
    ["can\n2 can", "Name each thing once."],
    ["y".repeat(81), "At most 80 characters a line."],
    [Array.from({ length: 21 }, (_, at) => `thing ${at}`).join("\n"), "At most 20 lines."],
  ])("is not taken as %j", (text, fault) => {
    expect(readLent(text, words).fault).toBe(fault);
  });
});
