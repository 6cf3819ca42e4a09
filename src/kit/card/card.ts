import type { Drawing } from "./drawing.ts";

/** Languages a card is written in; codes of ISO 639. */
export const CARD_LANGUAGES = ["en", "fr", "es", "pt", "de", "nb", "is", "pl", "ru", "fil", "vi"] as const;

/** Parts of a card, in this order. */
export const CARD_PARTS = ["go", "stop", "no-water"] as const;

/** Cautions a card may carry; the program has their words in every language of a card. */
export const CARD_CAUTIONS = [
  "carbon-monoxide",
  "petrol-vapour",
  "never-pump-fuel",
  "electric-shock",
  "refuel-stopped-and-cool",
  "opened-wrapping",
  "load-overhead",
  "hydraulic-injection",
  "pressurised-hose",
  "hot-exhaust",
  "recoil-kick",
  "heavy-lift",
] as const;

export type CardLanguage = (typeof CARD_LANGUAGES)[number];
export type CardPart = (typeof CARD_PARTS)[number];
export type CardCaution = (typeof CARD_CAUTIONS)[number];

/** One picture of the card and what is written under it. */
export interface CardStep {
  readonly id: string;
  readonly part: CardPart;
  /** Name of the file that the drawing was read from, or is missed in. */
  readonly file?: string;
  /** Absent where there is none, or none that can be read. */
  readonly drawing?: Drawing;
  readonly cautions: readonly CardCaution[];
  readonly words: Readonly<Partial<Record<CardLanguage, string>>>;
}

/** The card for people who have never seen the kit. */
export interface StrangerCard {
  /** Languages that a native speaker has read and found right. */
  readonly readByNative: readonly CardLanguage[];
  readonly steps: readonly CardStep[];
}
