import { expect, it } from "vitest";
import { sayCount } from "./say-count.ts";

it.each([
  [0, "line", undefined, "0 lines"],
  [1, "line", undefined, "1 line"],
  [2, "line", undefined, "2 lines"],
  [1, "entry", "entries", "1 entry"],
  [2, "entry", "entries", "2 entries"],
  [1, "person", "people", "1 person"],
])("%i %s is said as %s", (number, word, words, said) => {
  expect(sayCount(number, word, words)).toBe(said);
});
