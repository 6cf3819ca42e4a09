import { describe, expect, it } from "vitest";
import { keepCardChoice, readCardChoice } from "./card-choice.ts";

function drawer(start?: string) {
  let kept = start ?? null;
  return { getItem: () => kept, setItem: (_: string, text: string) => void (kept = text) };
}

describe("what a device shows on a card", () => {
  it("is English alone before anyone chose", () => {
    expect(readCardChoice(drawer())).toEqual({ language: "en", second: "", channel: "" });
  });

  it("is what was chosen, after a reload", () => {
    const storage = drawer();
    const choice = { language: "pl", second: "vi", channel: "16 / 67" } as const;
    keepCardChoice(storage, choice);
    expect(readCardChoice(storage)).toEqual(choice);
  });

  it.each([
    ["broken", "{"],
    ["of a language that it does not have", '{"language":"xx","second":"yy","channel":5}'],
    ["no record", "7"],
  ])("is English where what was kept is %s", (_, text) => {
    expect(readCardChoice(drawer(text))).toEqual({ language: "en", second: "", channel: "" });
  });

  it("is never one language twice", () => {
    expect(readCardChoice(drawer('{"language":"fr","second":"fr"}')).second).toBe("");
  });
});
