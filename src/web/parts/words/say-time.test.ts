import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayUntil } from "./say-time.ts";

const words = await fetchWords("en", "kitLine");

/** On the reader's own clock, whatever its zone. */
const at = (day: number, hour: number) => new Date(2027, 2, day, hour, 0).getTime();

describe("until when, in words", () => {
  it("says today, tomorrow, or the day", () => {
    expect(sayUntil(at(14, 20), at(14, 8), words)).toBe("20:00 today");
    expect(sayUntil(at(15, 8), at(14, 20), words)).toBe("08:00 tomorrow");
    expect(sayUntil(at(15, 8), at(15, 1), words)).toBe("08:00 today");
    expect(sayUntil(at(16, 8), at(14, 20), words)).toBe("08:00 on 16 Mar 2027");
  });

  it("knows tomorrow over the end of a month", () => {
    expect(sayUntil(at(32, 8), at(31, 20), words)).toBe("08:00 tomorrow");
  });
});
