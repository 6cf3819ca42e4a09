import { describe, expect, it } from "vitest";
import { isSeenName, plainName } from "./plain-name.ts";

describe("a name as it is compared", () => {
  it.each([
    [" Pump  1 ", "pump 1"],
    ["INES DUNMORE", "ines dunmore"],
    ["Ines\u200bDunmore", "inesdunmore"],
    ["Zoe\u0308", "zo\u00eb"],
  ])("%j is %j", (name, plain) => {
    expect(plainName(name)).toBe(plain);
  });
});

describe("a name that is what it looks like (Unicode UTS #39: mixed scripts; general categories Cc and Cf)", () => {
  it.each(["Ines Dunmore", "Zoë O'Brien-Łuk", "Инес Дунмор", "Ίνες", "山田 太郎", "علی\u200cرضا", "Pump 1 / 2"])(
    "%s",
    (name) => {
      expect(isSeenName(name)).toBe(true);
    },
  );

  it.each([
    ["Ines\u200bDunmore", "a blank of no width"],
    ["\u0406nes Dunmore", "a Cyrillic letter among Latin ones"],
    ["Mara\u202erevillot", "a turn of the writing"],
    ["\u001b[31mEvil\u0007", "an escape of a terminal"],
    ["Ines\u200cDunmore", "a joiner that Latin script has no use for"],
  ])("not %j: %s", (name) => {
    expect(isSeenName(name)).toBe(false);
  });
});
