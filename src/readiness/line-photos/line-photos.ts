import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { LinePictured } from "../kinds/people-parts.ts";
import type { Mark } from "../state.ts";

/** Photos that a keeper took of what is right, or wrong, at a line, with who said so and when. */
export type LinePhotos = LinePictured & Mark;

/** A line of the turnaround, or one check of it. */
export interface PhotosAsked {
  readonly step: string;
  readonly check?: string;
}

/**
 * A station's own photos of the lines of a pattern, oldest first, whatever the version they were taken under.
 *
 * @param lines - what was written about the pattern and counts, in order
 * @example linePhotosOf([]) // []
 */
export function linePhotosOf(lines: readonly Entry[]): readonly LinePhotos[] {
  return lines
    .filter(({ kind }) => kind === "line-pictured")
    .map((entry) => ({ ...markOf(entry), ...(entry.body as LinePictured) }));
}

/**
 * Those that stand at what is asked: a check's own, and those of its whole step; those that show what is right first.
 *
 * @example photosAt([], { step: "cut-seal" }) // []
 */
export function photosAt(all: readonly LinePhotos[], asked: PhotosAsked): readonly LinePhotos[] {
  const here = all.filter(({ step, check }) => step === asked.step && (check === undefined || check === asked.check));
  return (["right", "wrong"] as const).flatMap((side) => here.filter(({ shows }) => shows === side));
}
