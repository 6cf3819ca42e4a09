import type { SignalWord } from "#base";
import type { CardCaution } from "#kit";

/** What stands on every card, in one language. A kit's own words stand in its pattern. */
export interface CardWords {
  /** The language by its own name. */
  readonly name: string;
  readonly title: string;
  /** Heading of the part on stopping. */
  readonly stop: string;
  /** Heading of the part on no water. */
  readonly noWater: string;
  readonly kit: string;
  readonly channel: string;
  readonly notRead: string;
  /** What comes before the card. */
  readonly first: string;
  /** Where a step has no words in this language. */
  readonly noWords: string;
  /** The signal words as this language has them. */
  readonly signals: Readonly<Record<SignalWord, string>>;
  readonly cautions: Readonly<Record<CardCaution, string>>;
}
