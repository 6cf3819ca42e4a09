import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { WordsFirst } from "./words-first.tsx";

const WORDS = { words: "Counting what the log says." };

function Costly(): never {
  throw new Error("Counted before the words stood there.");
}

it("what takes long to count is not drawn before the words that it is being counted", () => {
  const drawn = renderToStaticMarkup(createElement(WordsFirst, WORDS, createElement(Costly)));
  expect(drawn).toBe("Counting what the log says.");
});
