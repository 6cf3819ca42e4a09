import { expect, it } from "vitest";
import { lintPatternText } from "./lint.ts";
import { SOUND_TEXT } from "../test-sound-pattern.ts";

it("judges the drawings of the card where it can read them: one missing, one that could run, a part unknown", () => {
  const files: Readonly<Record<string, string>> = {
    "sound@3/start-it.svg": drawing('<path class="line" data-part="propeller" d="M0 0L9 9"/>'),
    "sound@3/stop-it.svg": drawing('<path class="line" onload="alert(1)" d="M0 0L9 9"/>'),
  };
  const found = lintPatternText(SOUND_TEXT, "sound@3.yaml", (name) => files[name]);
  expect(found.map(({ rule, where }) => `${rule}, ${where}`)).toEqual([
    "card-part-unknown, card start-it",
    "card-undrawn, card stop-it",
    "card-undrawn, card fill-it",
  ]);
  expect(found[1]?.what).toContain("onload");
});

function drawing(inside: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 240 180"><title>It</title>${inside}</svg>`;
}
