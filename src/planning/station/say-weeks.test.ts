import { expect, it } from "vitest";
import { sayWeeks } from "./say-weeks.ts";

it.each([
  [[0], "the week of 12 January 2026"],
  [[0, 1, 2], "the weeks of 12 January 2026 to 26 January 2026"],
  [[1, 3, 4], "the weeks of 19 January 2026 and of 2 February 2026 to 9 February 2026"],
])("weeks %j of a plan are said by their Mondays", (weeks, words) => {
  expect(sayWeeks("2026-01-12", weeks)).toBe(words);
});
