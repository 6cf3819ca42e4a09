import type { Picture } from "#kit";

/** What is to be seen in a drawing and what is lit in it, as it is read aloud. */
export function sayPicture({ drawing, names }: Pick<Picture, "drawing" | "names">): string {
  return names.length === 0 ? `${drawing.title}.` : `${drawing.title}. Lit: ${names.join(", ")}.`;
}

/** What a station's own photo shows, in a word. */
export const SIDE_WORDS = { right: "Right", wrong: "Wrong" } as const;
