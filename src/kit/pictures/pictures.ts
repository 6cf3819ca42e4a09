import type { Drawing } from "../card/drawing.ts";

/*
 * What a kit looks like: drawings with named parts, and which part each line of the turnaround is about. They stand in a
 * file of their own beside the pattern, so that a better drawing is no other version of the pattern.
 */

/** Name of the file with the drawings' list, in the folder ID@VERSION beside the pattern. */
export const PICTURES_FILE = "drawings.yaml";

/** A drawing of the kit, or of a piece of it. */
export interface LineDrawing {
  readonly id: string;
  /** Name of the file that it was read from, or is missed in. */
  readonly file: string;
  /** True where it shows one layer of the container as it is stowed. */
  readonly layer: boolean;
  /** What people call each part, by the name it has in the drawing. */
  readonly parts: Readonly<Record<string, string>>;
  /** Absent where there is none, or none that can be read. */
  readonly drawing?: Drawing;
}

/** The drawing of a line, and the parts of it that the line is about. */
export interface Pointer {
  readonly drawing: string;
  readonly parts: readonly string[];
}

/** Drawings of a pattern, and what its lines point at. */
export interface Pictures {
  readonly drawings: readonly LineDrawing[];
  /** By id of the step. */
  readonly steps: Readonly<Record<string, Pointer>>;
  /** By id of the check; a check without one is shown as its step is. */
  readonly checks: Readonly<Record<string, Pointer>>;
}
