import type { CardLanguage } from "#kit";
import type { CardWords } from "./card-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";
import { es } from "./es.ts";
import { fil } from "./fil.ts";
import { fr } from "./fr.ts";
import { is } from "./is.ts";
import { nb } from "./nb.ts";
import { pl } from "./pl.ts";
import { pt } from "./pt.ts";
import { ru } from "./ru.ts";
import { vi } from "./vi.ts";

export type { CardWords } from "./card-words.ts";

/**
 * The card's own words by language.
 *
 * @source written for this card; signal words as the national editions of ISO 3864-2 have them, FROM MEMORY
 */
export const CARD_WORDS: Readonly<Record<CardLanguage, CardWords>> = { en, fr, es, pt, de, nb, is, pl, ru, fil, vi };

/** Languages whose words above a native speaker has read and found right: none yet. */
export const WORDS_READ_BY_NATIVE: readonly CardLanguage[] = [];
