import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { monthTicks } from "./months.ts";

const words = await fetchWords("en", "bands");

describe("months under an axis", () => {
  it("names every month of a year where there is room, the year at January", () => {
    const ticks = monthTicks("2026-11-25", "2027-11-24", 12, words);
    expect(ticks).toHaveLength(12);
    expect(ticks[0]).toEqual({ day: "2026-12-01", label: "Dec" });
    expect(ticks[1]).toEqual({ day: "2027-01-01", label: "Jan 2027" });
  });

  it("names fewer on a narrow screen, and keeps January", () => {
    const labels = monthTicks("2026-11-25", "2027-11-24", 4, words).map((tick) => tick.label);
    expect(labels).toEqual(["Jan 2027", "Apr", "Jul", "Oct"]);
  });

  it("names no month that begins before the range", () => {
    expect(monthTicks("2026-11-02", "2026-11-30", 6, words)).toEqual([]);
  });

  it("names years only over a long range", () => {
    expect(monthTicks("2020-05-01", "2024-05-01", 4, words).map((tick) => tick.day)).toEqual([
      "2021-01-01",
      "2022-01-01",
      "2023-01-01",
      "2024-01-01",
    ]);
  });
});
