import type { CardPart, Shape } from "#kit";

/** Signs at the head of a part, in the field of a drawing: to stop, and no water. */
export const PART_SIGNS: Readonly<Record<CardPart, readonly Shape[]>> = {
  go: [],
  stop: [
    { d: "M85 5L155 5L205 55L205 125L155 175L85 175L35 125L35 55Z", as: "solid" },
    { d: "M85 55L155 55L155 125L85 125Z", as: "paper" },
  ],
  "no-water": [
    { d: "M120 10Q176 84 176 116Q176 168 120 168Q64 168 64 116Q64 84 120 10Z", as: "bold" },
    { d: "M30 24L210 160M210 24L30 160", as: "no" },
  ],
};
