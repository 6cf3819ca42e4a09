import { InputError, isInputError } from "#base";
import { tryDrawing, type Beside } from "../card/build-card.ts";
import { shapeFaults } from "../file/file-faults.ts";
import { readYaml } from "../file/yaml-source.ts";
import { PICTURES_FILE, type LineDrawing, type Pictures } from "./pictures.ts";
import { picturesFile, type PicturesFile } from "./pictures-file.ts";

/** The pattern as far as its drawings want to know it. */
interface OfPattern {
  readonly id: string;
  readonly version: number;
}

/**
 * The drawings that stand beside a pattern; absent where it has none. A file that cannot be read is left out, and so is
 * a drawing: both are told by {@link pictureFaults}.
 */
export function buildPictures(pattern: OfPattern, beside: Beside): Pictures | undefined {
  const read = tryPictures(pattern, beside);
  return "pictures" in read ? read.pictures : undefined;
}

/** What is wrong with the drawings beside a pattern: their list, or a drawing named in it that cannot be read. */
export function pictureFaults(pattern: OfPattern, beside: Beside): readonly PictureFault[] {
  const read = tryPictures(pattern, beside);
  if ("wrong" in read) return [{ drawing: undefined, wrong: read.wrong }];
  return (read.pictures?.drawings ?? []).flatMap(({ id, file }) => {
    const drawn = tryDrawing(file, beside);
    return "wrong" in drawn ? [{ drawing: id, wrong: drawn.wrong }] : [];
  });
}

/** What is wrong with one drawing, or with the list where `drawing` is absent. */
export interface PictureFault {
  readonly drawing: string | undefined;
  readonly wrong: string;
}

type Read = { readonly pictures: Pictures | undefined } | { readonly wrong: string };

function tryPictures({ id, version }: OfPattern, beside: Beside): Read {
  const folder = `${id}@${version}`;
  const path = `${folder}/${PICTURES_FILE}`;
  const text = beside(path);
  if (text === undefined) return { pictures: undefined };
  try {
    return { pictures: built(readFile(text, path), folder, beside) };
  } catch (thrown) {
    if (isInputError(thrown)) return { wrong: thrown.message };
    throw thrown;
  }
}

function readFile(text: string, path: string): PicturesFile {
  const source = readYaml(text, path);
  const shape = picturesFile.safeParse(source.value);
  if (!shape.success) throw new InputError(shapeFaults(shape.error.issues, source));
  return shape.data;
}

function built(file: PicturesFile, folder: string, beside: Beside): Pictures {
  const drawings = file.drawings.map((own): LineDrawing => {
    const path = `${folder}/${own.id}.svg`;
    const read = tryDrawing(path, beside);
    return { ...own, file: path, ...("drawing" in read && { drawing: read.drawing }) };
  });
  return { drawings, steps: pointersOf(file.steps), checks: pointersOf(file.checks) };
}

function pointersOf(given: PicturesFile["steps"]): Pictures["steps"] {
  return Object.fromEntries(Object.entries(given).map(([id, { drawing, lit }]) => [id, { drawing, parts: lit }]));
}
