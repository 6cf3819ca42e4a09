import { z } from "zod";
import { HAZARDS } from "../hazards.ts";
import {
  bareNumber,
  block,
  countNumber,
  idText,
  listOf,
  oneWord,
  readingText,
  type OwnIssue,
} from "../file/schema-fields.ts";
import { CAUSE_ENGINES, TROUBLE_SIGNS, TRY_ENGINES } from "./trouble.ts";

/*
 * Fault finding as it is written in a pattern: for every sign the causes, and what to do about them.
 */

const causeBlock = block(
  {
    id: idText("Id of the cause, one of a kind under its sign."),
    says: readingText(80, "What it is, as a person would say it."),
    mode: idText("Id of the mode that a finding of it names; left out where nothing is broken.").exactOptional(),
    weight: countNumber(100, "How often it is this, beside the others: judgement, counted as so many findings."),
    engine: oneWord(
      CAUSE_ENGINES,
      "cold where it holds of a cold engine only: after a run it counts a tenth. Left out: of any engine.",
    ).exactOptional(),
  },
  "One thing that may be behind it.",
);

const tryBlock = block(
  {
    id: idText("Id of the try, one of a kind under its sign."),
    does: readingText(160, "What to do, as an instruction; then the kit is tried again."),
    minutes: bareNumber(0.1, 240, "Minutes it takes, with trying again."),
    hazards: listOf(oneWord(HAZARDS, "A hazard."), 0, "What it does that can hurt.").default([]),
    engine: oneWord(
      TRY_ENGINES,
      "cold for a way to start a cold engine: left out after a run. cool where the engine must have cooled: after a run the wait is counted. Left out: any engine.",
    ).exactOptional(),
    ends: z
      .record(idText("Id of a cause."), bareNumber(0, 1, "Chance that the trouble is over, where that is the cause."))
      .describe("By cause: chance that the trouble is over. Judgement."),
  },
  "One thing to do about it.",
);

const lookBlock = block(
  {
    does: readingText(200, "How to see that it is so, as an instruction."),
    hazards: listOf(oneWord(HAZARDS, "A hazard."), 0, "What it does that can hurt.").default([]),
  },
  "How to see the sign without harm.",
);

/** The part `troubles` of a pattern file. */
export const troublesBlock = listOf(
  block(
    {
      sign: oneWord(TROUBLE_SIGNS, "What is seen."),
      name: readingText(60, "The same, as a person would say it."),
      look: lookBlock.exactOptional(),
      nextPump: bareNumber(1, 240, "Minutes to leave it and put the next pump to work."),
      causes: listOf(causeBlock, 1, "What may be behind it."),
      tries: listOf(tryBlock, 1, "What to do about it."),
    },
    "A way in which the kit fails at work.",
  ).superRefine((trouble, context) => {
    const known = trouble.causes.map(({ id }) => id);
    for (const [i, { ends }] of trouble.tries.entries())
      for (const cause of Object.keys(ends).filter((id) => !known.includes(id))) {
        const params: OwnIssue = { code: "KI-107", remedy: "Correct the spelling, or add the cause." };
        const message = `the id of a cause of this sign: ${known.join(", ")}`;
        context.addIssue({ code: "custom", path: ["tries", i, "ends", cause], message, params: { ...params } });
      }
  }),
  1,
  "What to do when the kit fails at work, sign by sign.",
);
