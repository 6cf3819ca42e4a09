import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const css = readFileSync(new URL("./tokens.css", import.meta.url), "utf8");

function paletteTokens(name: "day" | "night"): Record<string, string> {
  const block = css.split(`[data-palette="${name}"] {`)[1]!.split("}")[0]!;
  return Object.fromEntries([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map((m) => [m[1]!, m[2]!]));
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const channel = (at: number) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

const WORDS = ["ink", "ink-quiet", "sea-ink", "wrong", "attention"];
const STANDINGS = ["ready", "limits", "grounded", "open", "away"].map((name) => `standing-${name}`);
const GROUNDS = ["paper", "sheet", "sea-faint"];
const FILLS = ["sea", "danger", "warning", "caution", "notice"];

describe.each([
  { palette: "day" as const, words: 7, fills: 7 },
  { palette: "night" as const, words: 5.5, fills: 4.5 },
])("the $palette palette", ({ palette, words, fills }) => {
  const tokens = paletteTokens(palette);

  test.each([...WORDS, ...STANDINGS].flatMap((word) => GROUNDS.map((ground) => [word, ground])))(
    "%s is legible on %s",
    (word, ground) => expect(contrast(tokens[word]!, tokens[ground]!)).toBeGreaterThanOrEqual(words),
  );

  test.each(FILLS)("words on %s are legible", (fill) => {
    expect(contrast(tokens[`on-${fill}`]!, tokens[fill]!)).toBeGreaterThanOrEqual(fills);
  });

  test.each(["wrong", "attention"])("%s is legible on its own faint ground", (tone) => {
    expect(contrast(tokens[tone]!, tokens[`${tone}-faint`]!)).toBeGreaterThanOrEqual(words);
  });

  test.each(["line", "focus"])("%s can be told from the ground", (name) => {
    expect(contrast(tokens[name]!, tokens["paper"]!)).toBeGreaterThanOrEqual(3);
  });
});

test("night gives off little light: no ground or fill is brighter than 6% of white", () => {
  const night = paletteTokens("night");
  for (const name of [...GROUNDS, ...FILLS]) expect(luminance(night[name]!)).toBeLessThan(0.06);
});
