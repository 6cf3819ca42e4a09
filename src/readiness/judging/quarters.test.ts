import { describe, expect, it } from "vitest";
import type { Check } from "#kit";
import { readQuarters } from "./quarters.ts";
import { judgeReading } from "./reading.ts";

const GAUGE = { kind: "match", first: "gauge", second: "tank", reads: "quarters" } as Check;
const judged = (first: string, second: string) =>
  judgeReading(GAUGE, { kind: "match", first, second }, { today: "2027-03-14" });

describe("a gauge that is read in quarters", () => {
  it.each([
    ["0", 0],
    ["empty", 0],
    ["0/4", 0],
    ["1/4", 1],
    ["¼", 1],
    ["1/2", 2],
    ["2/4", 2],
    ["half", 2],
    ["0,5", 2],
    [" 3 / 4 ", 3],
    ["75 %", 3],
    ["0.75", 3],
    ["4/4", 4],
    ["1", 4],
    ["Full", 4],
    ["plein", 4],
    ["100%", 4],
  ])("reads %s", (text, quarters) => {
    expect(readQuarters(text)).toBe(quarters);
  });

  it.each(["", "9/9", "5/4", "3/2", "1/3", "7/8", "2", "4", "101 %", "-1/4", "BR-07", "quarter to"])(
    "does not take %s for a reading",
    (text) => {
      expect(readQuarters(text)).toBeUndefined();
    },
  );

  it("agrees where both are nearest to the same quarter, however each was typed", () => {
    expect(judged("3/4", "75 %")).toMatchObject({ right: true, because: "agrees" });
    expect(judged("3/4", "0.8")).toMatchObject({ right: true });
    expect(judged("4/4", "1/2")).toMatchObject({ right: false, because: "differs" });
  });

  it("judges nothing that no gauge reads, though both are typed alike", () => {
    expect(judged("9/9", "9/9")).toBeUndefined();
    expect(judged("5/4", "1/4")).toBeUndefined();
  });
});
