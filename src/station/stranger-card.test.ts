import { cautionNamed } from "#base";
import { CARD_CAUTIONS, CARD_LANGUAGES, type CardStep, type StrangerCard } from "#kit";
import { describe, expect, it } from "vitest";
import { CARD_WORDS } from "./card-words/index.ts";
import { showCard } from "./stranger-card.ts";

const step = (id: string, part: CardStep["part"], more: Partial<CardStep> = {}): CardStep => ({
  id,
  part,
  cautions: [],
  words: { en: `Do ${id}.`, ru: "Делать." },
  ...more,
});

const CARD: StrangerCard = {
  readByNative: ["en"],
  steps: [
    step("stop", "stop"),
    step("lift", "go", { cautions: ["heavy-lift"] }),
    step("start", "go", { cautions: ["hot-exhaust", "carbon-monoxide"] }),
    step("look", "no-water", { cautions: ["carbon-monoxide"], words: { en: "Look." } }),
  ],
};

describe("the card for a stranger", () => {
  it("is in its parts, to water first, then stopping, then no water, numbered through", () => {
    const { sections } = showCard(CARD, ["en"]);
    expect(sections.map(({ part, lines }) => [part, ...lines.map(({ number, id }) => `${number} ${id}`)])).toEqual([
      ["go", "1 lift", "2 start"],
      ["stop", "3 stop"],
      ["no-water", "4 look"],
    ]);
    expect(sections[1]?.heading).toEqual([{ language: "en", text: "To stop" }]);
  });

  it("tells each caution once, gravest first, with its pictures, under the signal word of its language", () => {
    const { warnings } = showCard(CARD, ["ru", "en"]);
    expect(warnings.map(({ id, at }) => [id, ...at])).toEqual([
      ["carbon-monoxide", 2, 4],
      ["heavy-lift", 1],
      ["hot-exhaust", 2],
    ]);
    expect(warnings[0]).toMatchObject({ signal: "DANGER", signalWords: ["ОПАСНО", "DANGER"] });
  });

  it("says so where a step has no words in a language, in that language", () => {
    const look = showCard(CARD, ["en", "ru"]).sections[2]?.lines[0];
    expect(look?.words.map(({ text }) => text)).toEqual(["Look.", CARD_WORDS.ru.noWords]);
  });

  it("is marked as not read by a native speaker while the kit's words or the card's own have not been", () => {
    expect(showCard(CARD, ["en", "fr"]).notRead.map(({ language }) => language)).toEqual(["en", "fr"]);
  });
});

describe("the card's own words", () => {
  it.each(CARD_LANGUAGES)("in %s are all there, and no two cautions read alike", (language) => {
    const { cautions, signals, ...words } = CARD_WORDS[language];
    expect(new Set(Object.values(cautions)).size).toBe(CARD_CAUTIONS.length);
    expect(new Set(Object.values(signals)).size).toBe(4);
    for (const text of Object.values({ ...cautions, ...words })) expect(text.trim()).not.toBe("");
  });

  it("calls nothing safe, and gives a caution about people no NOTICE", () => {
    expect(Object.values(CARD_WORDS.en.cautions).join(" ")).not.toMatch(/\bsafe/i);
    for (const id of CARD_CAUTIONS) expect(cautionNamed(id).signal).not.toBe("NOTICE");
  });
});
