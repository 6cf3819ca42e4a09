import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { checkNamed, type Check } from "#kit";
import { SAMPLE } from "../kit-view/sample.ts";
import { oneTapOf } from "./one-tap.ts";

const words = await fetchWords("en", "act");

const check = (id: string) => checkNamed(SAMPLE, id);

describe("a right answer by one tap", () => {
  it("counts all of them, and says how many", () => {
    expect(oneTapOf(check("bands"), {}, {}, words)).toEqual({
      words: "Seen: 4 bands, all",
      value: { kind: "count", count: 4 },
    });
  });

  it("never writes over what was entered", () => {
    expect(oneTapOf(check("bands"), { count: "3" }, {}, words)).toBeUndefined();
    expect(oneTapOf(check("number"), { first: "7", second: "8" }, {}, words)).toBeUndefined();
    expect(oneTapOf(check("cord"), { typed: "7 cm" }, { isMeasured: true }, words)).toBeUndefined();
  });

  it("wants the first of two numbers read before it says that both are the same", () => {
    expect(oneTapOf(check("number"), {}, {}, words)).toBeUndefined();
    expect(oneTapOf(check("number"), { first: " 7 " }, {}, words)).toMatchObject({
      words: "Both read 7",
      value: { first: "7", second: "7" },
    });
  });

  it("says of no two sides of a gauge that they read what no gauge reads", () => {
    const gauge = { ...check("number"), reads: "quarters" } as Check;
    expect(oneTapOf(gauge, { first: "9/9" }, {}, words)).toBeUndefined();
    expect(oneTapOf(gauge, { first: "3/4" }, {}, words)).toMatchObject({ words: "Both read 3/4" });
  });

  it("says the number again that both read at an earlier line of the turnaround, unless they differed there", () => {
    const both = { kind: "match", first: "7", second: "7" } as const;
    expect(oneTapOf(check("number"), {}, { earlier: both }, words)).toEqual({
      words: "Both read 7, as before",
      value: both,
    });
    expect(oneTapOf(check("number"), {}, { earlier: { ...both, second: "8" } }, words)).toBeUndefined();
    expect(oneTapOf(check("number"), { second: "9" }, { earlier: both }, words)).toBeUndefined();
  });

  it("takes the seal as it was read at the opening, only where it was the one on record", () => {
    const known = { recorded: "00417", openedSeal: "BR 00417" };
    expect(oneTapOf(check("seal"), {}, { ...known, recorded: "BR 00417" }, words)).toMatchObject({
      value: { kind: "match", first: "BR 00417", second: "BR 00417" },
    });
    expect(oneTapOf(check("seal"), {}, { recorded: "BR 00418", openedSeal: "BR 00417" }, words)).toBeUndefined();
    expect(oneTapOf(check("seal"), {}, { openedSeal: "BR 00417" }, words)).toBeUndefined();
  });

  it("lets a measurement made once be looked at, and only then", () => {
    expect(oneTapOf(check("cord"), {}, { isMeasured: true }, words)).toEqual({ words: "Seen: the cord is right" });
    expect(oneTapOf(check("cord"), {}, {}, words)).toBeUndefined();
  });
});
