import { z } from "zod";
import { block, idText, listOf, readingText } from "../file/schema-fields.ts";

/*
 * The file `drawings.yaml` as it is written: drawings with the names of their parts, then step by step and check by check
 * what is lit.
 */

const MOST_OF_A_NAME = 60;

const drawingBlock = block(
  {
    id: idText("Id of the drawing; ID.svg in the same folder."),
    layer: z
      .boolean({ error: "true or false" })
      .describe("True where it shows one layer of the container as it is stowed.")
      .default(false),
    parts: z
      .record(idText("Name of the part in the drawing."), readingText(MOST_OF_A_NAME, "What people call it."), {
        error: "the drawing's parts, each with a name in words",
      })
      .describe("The drawing's parts, each with a name in words.")
      .default({}),
  },
  "One drawing.",
);

const pointerBlock = block(
  {
    drawing: idText("Id of a drawing."),
    lit: listOf(idText("Name of a part."), 0, "Parts that stand out.").default([]),
  },
  "The drawing of a line, and the parts that stand out in it.",
);

const pointers = (about: string) =>
  z.record(idText("An id."), pointerBlock, { error: "ids, each with drawing and lit" }).describe(about).default({});

/** The whole file. */
export const picturesFile = block(
  {
    drawings: listOf(drawingBlock, 0, "The drawings."),
    steps: pointers("What is shown at a step, by its id."),
    checks: pointers("What is shown at a check, by its id, where it is not that of its step."),
  },
  "Drawings of a pattern.",
);

export type PicturesFile = z.output<typeof picturesFile>;
