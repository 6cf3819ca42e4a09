import { parseDocument } from "yaml";
import SOUND_TEXT from "./test-sound-pattern.yaml?raw";

export { SOUND_TEXT };

type Path = readonly (string | number)[];

/** The sound pattern's text with one value at a path put in its place; undefined takes the field out. */
export function changedText(...changes: readonly (readonly [Path, unknown])[]): string {
  const document = parseDocument(SOUND_TEXT);
  for (const [path, value] of changes) {
    if (value === undefined) document.deleteIn(path);
    else document.setIn(path, value);
  }
  return document.toString();
}
