import { cautionNamed, type SignalWord } from "#base";
import {
  CARD_PARTS,
  type CardCaution,
  type CardLanguage,
  type CardPart,
  type CardStep,
  type Drawing,
  type StrangerCard,
} from "#kit";
import { CARD_WORDS, WORDS_READ_BY_NATIVE } from "./card-words/index.ts";

/** Text in one language. */
export interface Worded {
  readonly language: CardLanguage;
  readonly text: string;
}

/** One picture of the card with what is written under it, ready to be shown. */
export interface CardLine {
  readonly id: string;
  /** Counted through the whole card, from 1. */
  readonly number: number;
  /** Absent where the pattern has none: then the words stand alone. */
  readonly drawing?: Drawing;
  /** One for each language of the card. */
  readonly words: readonly Worded[];
  readonly cautions: readonly CardWarning[];
}

/** A hazard and what to do, in the languages of the card. */
export interface CardWarning {
  readonly id: CardCaution;
  readonly signal: SignalWord;
  /** The signal word, one for each language, each once. */
  readonly signalWords: readonly string[];
  readonly words: readonly Worded[];
  /** Numbers of the pictures at which it stands. */
  readonly at: readonly number[];
}

/** A part of the card with its heading. */
export interface CardSection {
  readonly part: CardPart;
  readonly heading: readonly Worded[];
  readonly lines: readonly CardLine[];
}

/** The card in one or two languages: the same for screen and paper. */
export interface ShownCard {
  readonly title: readonly Worded[];
  readonly sections: readonly CardSection[];
  /** Every caution of the card once, gravest first, then by its first picture. */
  readonly warnings: readonly CardWarning[];
  /** Per language that no native speaker has read: so much is said. */
  readonly notRead: readonly Worded[];
  readonly first: readonly Worded[];
  readonly kit: string;
  readonly channel: string;
}

/**
 * The card for people who have never seen the kit, in these languages.
 *
 * @param card - the card of the kit's pattern
 * @param languages - one or two; the first is the reader's
 */
export function showCard(card: StrangerCard, languages: readonly CardLanguage[]): ShownCard {
  const say = (pick: (words: (typeof CARD_WORDS)["en"]) => string): readonly Worded[] =>
    languages.map((language) => ({ language, text: pick(CARD_WORDS[language]) }));
  const ordered = CARD_PARTS.flatMap((part) => card.steps.filter((step) => step.part === part));
  const warnings = warningsOf(ordered, languages);
  const lines = ordered.map((step, index) => lineOf(step, index + 1, languages, warnings));
  const headings: Readonly<Record<CardPart, readonly Worded[]>> = {
    go: [],
    stop: say(({ stop }) => stop),
    "no-water": say(({ noWater }) => noWater),
  };
  const inPart = (part: CardPart) => lines.filter((_, index) => ordered[index]?.part === part);
  return {
    title: say(({ title }) => title),
    sections: CARD_PARTS.map((part) => ({ part, heading: headings[part], lines: inPart(part) })),
    warnings,
    notRead: say(({ notRead }) => notRead).filter(({ language }) => !isRead(card, language)),
    first: say(({ first }) => first),
    kit: joined(say(({ kit }) => kit)),
    channel: joined(say(({ channel }) => channel)),
  };
}

/** True where a native speaker has read both the kit's words and the card's own. */
function isRead(card: StrangerCard, language: CardLanguage): boolean {
  return card.readByNative.includes(language) && WORDS_READ_BY_NATIVE.includes(language);
}

function lineOf(
  step: CardStep,
  number: number,
  languages: readonly CardLanguage[],
  warnings: readonly CardWarning[],
): CardLine {
  const wordsIn = (language: CardLanguage) => step.words[language] ?? CARD_WORDS[language].noWords;
  return {
    id: step.id,
    number,
    ...(step.drawing && { drawing: step.drawing }),
    words: languages.map((language) => ({ language, text: wordsIn(language) })),
    cautions: warnings.filter(({ id }) => step.cautions.includes(id)),
  };
}

const GRAVEST_FIRST: readonly SignalWord[] = ["DANGER", "WARNING", "CAUTION", "NOTICE"];

function warningsOf(steps: readonly CardStep[], languages: readonly CardLanguage[]): readonly CardWarning[] {
  const shown = [...new Set(steps.flatMap(({ cautions }) => cautions))];
  return shown
    .toSorted((one, other) => rank(one) - rank(other))
    .map((id) => {
      const { signal } = cautionNamed(id);
      return {
        id,
        signal,
        signalWords: [...new Set(languages.map((language) => CARD_WORDS[language].signals[signal]))],
        words: languages.map((language) => ({ language, text: CARD_WORDS[language].cautions[id] })),
        at: steps.flatMap(({ cautions }, index) => (cautions.includes(id) ? [index + 1] : [])),
      };
    });
}

function joined(words: readonly Worded[]): string {
  return [...new Set(words.map(({ text }) => text))].join(" / ");
}

function rank(id: CardCaution): number {
  return GRAVEST_FIRST.indexOf(cautionNamed(id).signal);
}
