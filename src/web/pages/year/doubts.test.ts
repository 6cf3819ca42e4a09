import { expect, it } from "vitest";
import { doubtOf } from "./doubts.ts";

const OPENING = { kit: "k", week: 0, renews: [], by: [] };
const NAIVE = { openings: 2, worstHours: 1, shortWeeks: 1, wasted: 0 };
const SHORT = { place: "p", week: 0, by: 1 };
const answer = (openings: number, short: number, naive = NAIVE) => ({
  openings: Array.from({ length: openings }, () => OPENING),
  short: Array.from({ length: short }, () => SHORT),
  hours: [],
  wasted: 0,
  gap: 0,
  naive,
});

it.each([
  [answer(0, 4), "opens-nothing"],
  [answer(0, 0, { ...NAIVE, openings: 0, shortWeeks: 0 }), undefined],
  [answer(2, 2), "shorter"],
  [answer(3, 1), "more-openings"],
  [answer(3, 0), undefined],
  [answer(2, 1), undefined],
])(
  "a plan that opens nothing or is worse than each thing on its last day is not offered without a word: %#",
  (of, doubt) => {
    expect(doubtOf(of)).toBe(doubt);
  },
);
