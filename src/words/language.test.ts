import { describe, expect, test } from "vitest";
import { fetchWords, isSpeech, lengthen, tagOf } from "./language.ts";

describe("words in a language", () => {
  test("take singular and plural by the rules of Unicode CLDR: in French none is singular, in English it is not", async () => {
    const [english, french] = await Promise.all([fetchWords("en", "frame"), fetchWords("fr", "frame")]);
    const said = (words: typeof english) => [0, 1, 2].map((count) => words.refused({ count }));
    expect(said(english)).toEqual(["0 lines refused", "1 line refused", "2 lines refused"]);
    expect(said(french)).toEqual(["0 ligne refusée", "1 ligne refusée", "2 lignes refusées"]);
  });

  test("group figures as the language does", async () => {
    const [english, french] = await Promise.all([fetchWords("en", "frame"), fetchWords("fr", "frame")]);
    const counts = { here: 12_000, of: 200_000 };
    expect(english.earlyCounts(counts)).toBe("12,000 of 200,000 lines are here.");
    expect(french.earlyCounts(counts)).toBe("12\u202f000 lignes sur 200\u202f000 sont ici.");
  });

  test("are longer, accented and in brackets in the made-up language, whatever stands in them", async () => {
    expect(lengthen("Parts")).toBe("⟦Párts ~⟧");
    const longer = await fetchWords("longer", "signIn");
    expect(longer.titleAt({ station: "Skerry" })).toBe("⟦Sígn ín át Skérry ~ ~⟧");
    expect(longer.titleAt({ station: "\uE000" })).toBe("⟦Sígn ín át  ~ ~⟧\uE000");
  });

  test("are known by their names", () => {
    expect(["en", "fr", "longer", "toString", "de", null].filter(isSpeech)).toEqual(["en", "fr", "longer"]);
    expect([tagOf("en"), tagOf("fr")]).toEqual(["en-GB", "fr"]);
  });
});
