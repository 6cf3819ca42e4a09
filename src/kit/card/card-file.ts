import { z } from "zod";
import { block, idText, listOf, oneWord, readingText } from "../file/schema-fields.ts";
import { CARD_CAUTIONS, CARD_LANGUAGES, CARD_PARTS } from "./card.ts";

/*
 * The card for a stranger as it is written in a pattern: what somebody who has never seen the kit does, picture by
 * picture, in several languages.
 */

/** Most characters of a step's words: what is read at a glance, three lines under a picture. */
const MOST_CHARACTERS = 80;

const language = oneWord(CARD_LANGUAGES, "A language of the card.");

const cardStepBlock = block(
  {
    id: idText("Id of the step, one of a kind on the card."),
    part: oneWord(CARD_PARTS, "go: from the closed container to water; stop: how to stop; no-water: when none comes."),
    drawing: idText("Name of the drawing: NAME.svg in the folder ID@VERSION beside this file.").exactOptional(),
    cautions: listOf(oneWord(CARD_CAUTIONS, "A caution."), 0, "Cautions that stand at this step.").default([]),
    words: z
      .partialRecord(language, readingText(MOST_CHARACTERS, "What to do, in this language."), {
        error: `words under the languages ${CARD_LANGUAGES.join(", ")}`,
      })
      .describe("What to do, by language."),
  },
  "One picture of the card.",
);

/** The part `stranger` of a pattern file. */
export const cardBlock = block(
  {
    readByNative: listOf(language, 0, "Languages that a native speaker has read on this card and found right.").default(
      [],
    ),
    steps: listOf(cardStepBlock, 1, "The pictures, in order."),
  },
  "The card for people who have never seen the kit.",
);
