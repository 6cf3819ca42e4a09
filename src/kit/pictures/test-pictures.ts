import type { LintRule } from "../lint/lint-fault.ts";

/* Drawings of the sound pattern for tests, and the rules that are tried on them. */

/** Rules of the lint that the tests of this folder try. */
export const PICTURE_RULES = [
  "drawing-unread",
  "drawing-never-shown",
  "drawing-untitled",
  "drawing-part-unnamed",
  "shown-line-unknown",
  "shown-drawing-unknown",
  "shown-part-unknown",
  "restow-without-layer",
] as const satisfies readonly LintRule[];

/** A list of drawings that the lint finds nothing in. */
export const SOUND_PICTURES = `drawings:
  - id: pump-front
    parts: { shaft: Shaft, bolt: Bolt }
  - id: layer-one
    layer: true
    parts: { pump: The pump }
steps:
  vent: { drawing: pump-front, lit: [shaft] }
  stow: { drawing: layer-one, lit: [pump] }
checks:
  pump-turns: { drawing: pump-front, lit: [bolt] }
`;

/** A drawing with these parts. */
export function drawn(title: string, ...parts: readonly string[]): string {
  const shapes = parts.map((part) => `<path class="body" data-part="${part}" d="M1 1L9 1L9 9Z"/>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 240 180"><title>${title}</title>${shapes.join("")}</svg>`;
}

/** The files beside the sound pattern, some put in the place of others. */
export function picturesBeside(changed: Readonly<Record<string, string>> = {}): (name: string) => string | undefined {
  const files: Readonly<Record<string, string>> = {
    "sound@3/drawings.yaml": SOUND_PICTURES,
    "sound@3/pump-front.svg": drawn("The pump from the front", "shaft", "bolt"),
    "sound@3/layer-one.svg": drawn("The pump on the floor", "pump"),
    ...Object.fromEntries(["start-it", "stop-it", "fill-it"].map((id) => [`sound@3/${id}.svg`, drawn("It", "pump")])),
    ...changed,
  };
  return (name) => files[name];
}
