import type { Words } from "#words";
import type { Picture } from "#kit";

/** What is to be seen in a drawing and what is lit in it, as it is read aloud. */
export function sayPicture(
  { drawing, names }: Pick<Picture, "drawing" | "names">,
  words: Words["turnaroundFit"],
): string {
  if (names.length === 0) return words.picture({ title: drawing.title });
  return words.pictureLit({ title: drawing.title, names: names.join(", ") });
}
