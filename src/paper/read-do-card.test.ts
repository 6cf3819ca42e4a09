import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import PdfKit from "pdfkit";
import { describe, expect, it } from "vitest";
import { CARD_LANGUAGES, newestOfEach, type CardLanguage, type Pattern } from "#kit";
import { CARD_WORDS, showCard } from "#station";
import { readPatternFolders } from "#store/patterns";
import { layoutCard, warningSize } from "./card-layout.ts";
import { runsOf } from "./card-text.ts";
import { registerCardFonts } from "./fonts.ts";
import { renderReadDoCard } from "./index.ts";

const { patterns, wrong } = readPatternFolders([join(import.meta.dirname, "..", "..", "patterns")]);
const shipped = new Map(newestOfEach(patterns).map((one) => [one.id, one]));
const petrol = shipped.get("brinnet-450")!;
const electric = shipped.get("ossel-200")!;
const about = { stationName: "Brannock Reach", now: "2027-03-14T12:00:00Z" };

function pages(pdf: Uint8Array): number {
  const text = Buffer.from(pdf).toString("latin1");
  return [...text.matchAll(/\/Type \/Page\b(?!s)/g)].length;
}

/** Pairs of languages, either first. */
const PAIRS = CARD_LANGUAGES.flatMap((first) =>
  CARD_LANGUAGES.filter((second) => second !== first).map((second) => [first, second] as const),
).toSorted((one, other) => (one.join(" ") < other.join(" ") ? -1 : 1));
/** Pairs that the petrol kit's page holds. */
const PETROL_PAIRS = "en is, en nb, en pl, es is, es nb, is nb, is pl, is ru, nb pl, nb ru".split(", ");
/** Measures text; nothing is written on it. */
const RULER = new PdfKit();
registerCardFonts(RULER);

function layoutOf({ stranger }: Pattern, languages: readonly CardLanguage[]) {
  return layoutCard(RULER, showCard(stranger!, languages));
}

/** Every text that stands on a card in this language. */
function textsOf({ stranger }: Pattern, language: CardLanguage): readonly string[] {
  const { cautions, signals, ...own } = CARD_WORDS[language];
  const words = stranger?.steps.map((step) => step.words[language] ?? "") ?? [];
  return [...words, ...Object.values(cautions), ...Object.values(signals), ...Object.values(own)];
}

/** The letters that each file of a typeface has, as its package says: ranges by subset. */
function lettersOf(typeface: string): Readonly<Record<string, string>> {
  const path = createRequire(import.meta.url).resolve(`@fontsource/${typeface}/unicode.json`);
  return JSON.parse(readFileSync(path, "utf8")) as Readonly<Record<string, string>>;
}

const LETTERS = { narrow: lettersOf("atkinson-hyperlegible-next"), wide: lettersOf("noto-sans") };

function isInFile(sign: string, file: string): boolean {
  const [, face, subset] = /^(narrow|wide)-(.+)-\d+$/.exec(file)!;
  const code = sign.codePointAt(0)!;
  const ranges = LETTERS[face as keyof typeof LETTERS][subset!] ?? "";
  return ranges.split(",").some((range) => {
    const [first = 0, last = first] = range
      .replace("U+", "")
      .split("-")
      .map((one) => Number.parseInt(one, 16));
    return code >= first && code <= last;
  });
}

describe("the card for a stranger on paper", () => {
  it("finds every drawing of the shipped patterns", () => {
    expect(wrong).toEqual([]);
  });

  it.each(CARD_LANGUAGES)("is one page in %s, petrol and electric, kit and channel on it", async (language) => {
    for (const pattern of [petrol, electric]) {
      const pdf = await renderReadDoCard({
        ...about,
        pattern,
        languages: [language],
        kit: "BR-03",
        channel: "16 / 67",
      });
      expect(pages(pdf!)).toBe(1);
    }
  });

  it("has every letter of every language in the file that it is set from, as the typefaces' packages list them", () => {
    const runs = CARD_LANGUAGES.flatMap((language) =>
      [petrol, electric]
        .flatMap((pattern) => textsOf(pattern, language))
        .flatMap((text) => [false, true].flatMap((bold) => runsOf(text, { size: 10, language, bold }))),
    );
    const missing = runs.flatMap(({ font, text }) => [...text].filter((sign) => !isInFile(sign, font)));
    expect([...new Set(missing)]).toEqual([]);
    const files = new Set(runs.map(({ font }) => font));
    for (const file of ["wide-cyrillic-400", "wide-vietnamese-700", "narrow-latin-ext-400"])
      expect(files).toContain(file);
  });

  it("writes no letter as a question mark that is none", () => {
    for (const language of CARD_LANGUAGES)
      for (const text of [petrol, electric].flatMap((pattern) => textsOf(pattern, language))) {
        const written = runsOf(text, { size: 10, language })
          .map((run) => run.text)
          .join("");
        expect(written).toBe(text);
      }
  });

  it("keeps words of 9 points or more, warnings too, and pictures 19 mm high or more in one language", () => {
    for (const pattern of [petrol, electric])
      for (const language of CARD_LANGUAGES) {
        const layout = layoutOf(pattern, [language])!;
        expect(layout.size).toBeGreaterThanOrEqual(9);
        expect(warningSize(layout.size)).toBeGreaterThanOrEqual(9);
        expect(layout.picture).toBeGreaterThanOrEqual((19 * 72) / 25.4);
      }
  });

  it("holds any two languages of the electric kit at 8 points or more", () => {
    for (const [first, second] of PAIRS) expect(layoutOf(electric, [first, second])?.size).toBeGreaterThanOrEqual(8);
  });

  it("holds 10 of the petrol kit's 55 pairs of languages on one page, whichever comes first", () => {
    const fitting = PAIRS.filter((pair) => layoutOf(petrol, pair) !== undefined).map((pair) => pair.join(" "));
    expect(fitting).toEqual(PETROL_PAIRS.flatMap((pair) => [pair, pair.split(" ").toReversed().join(" ")]).toSorted());
  });

  it("prints a pair that one page does not hold front and back, each language whole and the other one named", async () => {
    for (const [first, second] of [
      ["ru", "vi"],
      ["de", "fr"],
    ] as const) {
      const pair = (await renderReadDoCard({ ...about, pattern: petrol, languages: [first, second] }))!;
      expect(pages(pair)).toBe(2);
      const alone = await Promise.all(
        [first, second].map((one) => renderReadDoCard({ ...about, pattern: petrol, languages: [one] })),
      );
      expect(pair.length).toBeGreaterThan(Math.max(...alone.map((one) => one!.length)));
    }
  });

  it("has the signal word at each picture that a warning belongs to: below it, beside what to do", () => {
    const layout = layoutOf(petrol, ["en"])!;
    const bare = {
      ...petrol,
      stranger: { ...petrol.stranger!, steps: petrol.stranger!.steps.map((step) => ({ ...step, cautions: [] })) },
    };
    const without = layoutCard(RULER, {
      ...showCard(petrol.stranger!, ["en"]),
      sections: showCard(bare.stranger, ["en"]).sections,
    })!;
    const rows = layout.rows.map(({ cells }) => cells.some(({ line }) => line.cautions.length > 0));
    expect(rows).toEqual([true, true, true, false, true, false]);
    expect(layout.picture).toBeLessThan(without.picture);
  });

  it("puts two languages on the electric kit's page, and says which did not fit where no page of its own holds it", async () => {
    const two = await renderReadDoCard({ ...about, pattern: electric, languages: ["pl", "is"] });
    const one = await renderReadDoCard({ ...about, pattern: electric, languages: ["pl"] });
    expect(pages(two!)).toBe(1);
    expect(two!.length).toBeGreaterThan(one!.length);
    const steps = petrol.stranger!.steps.map((step) => ({
      ...step,
      words: { en: "word ".repeat(15), de: "Wort ".repeat(40) },
    }));
    const long = { ...petrol, stranger: { ...petrol.stranger!, steps } };
    expect(pages((await renderReadDoCard({ ...about, pattern: long, languages: ["en", "de"] }))!)).toBe(1);
  });

  it("is none where the pattern has no card, or one that no page holds", async () => {
    const { stranger, ...bare } = petrol;
    expect(await renderReadDoCard({ ...about, pattern: bare, languages: ["en"] })).toBeUndefined();
    const steps = Array.from({ length: 90 }, (_, index) => ({ ...stranger!.steps[0]!, id: `s${index}` }));
    const endless = { ...bare, stranger: { ...stranger!, steps } };
    expect(await renderReadDoCard({ ...about, pattern: endless, languages: ["en"] })).toBeUndefined();
  });
});
