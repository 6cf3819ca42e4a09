import type { Drawing } from "../card/drawing.ts";
import type { Pattern } from "../pattern.ts";
import type { Pictures, Pointer } from "./pictures.ts";

/** A drawing ready to be shown at a line: what is lit in it, and what that is called. */
export interface Picture {
  readonly id: string;
  readonly drawing: Drawing;
  readonly layer: boolean;
  /** Parts of the drawing that stand out. */
  readonly lit: readonly string[];
  /** Their names in words, in the same order. */
  readonly names: readonly string[];
}

/**
 * What is drawn at a line of the turnaround: at a check what it points at itself, else what its step does.
 *
 * @returns absent where the line points at nothing, or at a drawing that is not there
 * @example
 * const pattern = { pictures: { drawings: [], steps: {}, checks: {} } };
 * pictureAt(pattern, "cut-seal") // undefined
 */
export function pictureAt({ pictures }: Pick<Pattern, "pictures">, step: string, check?: string): Picture | undefined {
  if (pictures === undefined) return undefined;
  const pointer = (check === undefined ? undefined : pictures.checks[check]) ?? pictures.steps[step];
  return pointer && pointedAt(pictures, pointer);
}

function pointedAt({ drawings }: Pictures, { drawing: id, parts: lit }: Pointer): Picture | undefined {
  const found = drawings.find((one) => one.id === id);
  if (found?.drawing === undefined) return undefined;
  const names = lit.map((part) => found.parts[part] ?? part);
  return { id, drawing: found.drawing, layer: found.layer, lit, names };
}

/** A line of the turnaround, or one check of it. */
export interface PictureAsked {
  readonly step: string;
  readonly check?: string;
}

/**
 * What is drawn for several checks or lines that stand on the screen together: each drawing once, in order, with all that
 * is lit in it.
 *
 * @example
 * const pattern = { pictures: { drawings: [], steps: {}, checks: {} } };
 * picturesAt(pattern, [{ step: "cut-seal" }]).length // 0
 */
export function picturesAt(pattern: Pick<Pattern, "pictures">, asked: readonly PictureAsked[]): readonly Picture[] {
  const each = asked.flatMap(({ step, check }) => pictureAt(pattern, step, check) ?? []);
  const ids = [...new Set(each.map(({ id }) => id))];
  return ids.flatMap((id) => asOne(each.filter((one) => one.id === id)));
}

function asOne(same: readonly Picture[]): readonly Picture[] {
  const [first] = same;
  if (first === undefined) return [];
  const called = new Map(same.flatMap(({ lit, names }) => lit.map((part, at) => [part, names[at] ?? part] as const)));
  return [{ ...first, lit: [...called.keys()], names: [...new Set(called.values())] }];
}
