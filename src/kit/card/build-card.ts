import { isInputError } from "#base";
import type { z } from "zod";
import type { cardBlock } from "./card-file.ts";
import type { CardStep, StrangerCard } from "./card.ts";
import { readDrawing, type Drawing } from "./drawing.ts";

/** Text of a file by its name, seen from the pattern's file; undefined where there is none. */
export type Beside = (name: string) => string | undefined;

type CardFile = z.output<typeof cardBlock>;

/** The card with its drawings; one that cannot be read is left out and told by {@link drawingFault}. */
export function buildCard(file: CardFile, folder: string, beside: Beside): StrangerCard {
  const steps = file.steps.map(({ drawing: name, ...own }): CardStep => {
    if (name === undefined) return own;
    const path = `${folder}/${name}.svg`;
    const read = tryDrawing(path, beside);
    return { ...own, file: path, ...("drawing" in read && { drawing: read.drawing }) };
  });
  return { readByNative: file.readByNative, steps };
}

/** What is wrong with a step's drawing: no file named, none there, or one that cannot be read. */
export function drawingFault({ file }: CardStep, beside: Beside): string | undefined {
  if (file === undefined) return "no drawing is named";
  const read = tryDrawing(file, beside);
  return "wrong" in read ? read.wrong : undefined;
}

/** The drawing in this file beside the pattern, or what is wrong with it. */
export function tryDrawing(path: string, beside: Beside): { readonly drawing: Drawing } | { readonly wrong: string } {
  const text = beside(path);
  if (text === undefined) return { wrong: `${path} is not there` };
  try {
    return { drawing: readDrawing(text, path) };
  } catch (thrown) {
    if (isInputError(thrown)) return { wrong: thrown.message };
    throw thrown;
  }
}
