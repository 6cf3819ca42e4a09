import { describe, expect, it } from "vitest";
import { linesOf } from "#kit";
import { shippedPattern } from "#test/patterns/shipped-patterns.ts";
import { renderPatternCard } from "../index.ts";
import { pictureNumber, pictureNumbers } from "./picture-page.ts";

const pattern = shippedPattern("brinnet-450@2");
const { pictures, ...bare } = pattern;
const ALL = Number.POSITIVE_INFINITY;

function pages(pdf: Uint8Array): number {
  return [
    ...Buffer.from(pdf)
      .toString("latin1")
      .matchAll(/\/Type \/Page\b(?!s)/g),
  ].length;
}

const card = { stationName: "Brannock Reach", units: "us", now: "2027-03-14T12:00:00Z" } as const;

describe("drawings on a card", () => {
  it("are numbered as the lines first show them, and every line that shows one finds its number", () => {
    const numbers = pictureNumbers(pattern, ALL);
    expect([...numbers.values()]).toEqual(Array.from(numbers, (_, at) => at + 1));
    expect(numbers.size).toBe(pictures?.drawings.length);
    const first = linesOf(pattern).map((line) => pictureNumber(pattern, numbers, line));
    expect(first[0]).toBe(1);
    expect(first.filter((one) => one === undefined).length).toBe(1);
  });

  it("are numbered at a line only where the line before shows another", () => {
    const numbers = pictureNumbers(pattern, ALL);
    const [one] = linesOf(pattern);
    expect(pictureNumber(pattern, numbers, one!)).toBe(1);
    expect(pictureNumber(pattern, numbers, one!, one)).toBeUndefined();
  });

  it("are the layers first where there is no room for all", () => {
    const layers = pictures?.drawings.filter(({ layer }) => layer).map(({ id }) => id) ?? [];
    const few = [...pictureNumbers(pattern, layers.length).keys()];
    expect(few.toSorted()).toEqual(layers.toSorted());
    expect(pictureNumbers(pattern, 0).size).toBe(0);
  });

  it.each(["brinnet-450@2", "ossel-200@2"])("keep the card of %s to six pages", async (key) => {
    const pdf = await renderPatternCard({ ...card, pattern: shippedPattern(key) });
    expect(pages(pdf)).toBeLessThanOrEqual(6);
  });

  it("add something to it, and nothing where a pattern has none", async () => {
    const [drawn, plain] = [
      await renderPatternCard({ ...card, pattern }),
      await renderPatternCard({ ...card, pattern: bare }),
    ];
    expect(drawn.length).toBeGreaterThan(plain.length * 1.1);
    expect(pictureNumbers(bare, ALL).size).toBe(0);
  });
});
