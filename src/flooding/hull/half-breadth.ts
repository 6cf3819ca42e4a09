import { makeHull, MOST_PIECES, PIECE, type HullForm } from "./hull-form.ts";

/**
 * Half the breadth of a hull at one place: from the centre line to her shell.
 *
 * @param form - the hull, valid, lengths in [m]
 * @param x - forward of the after end [m]
 * @param z - above the keel [m]
 * @returns half-breadth [m]; 0 where she has no section at this height
 * @source DERIVED: docs/methods/flooding.md, "Hull forms"
 * @example halfBreadthAt({ form: "wedge", length: 9, beam: 2, depth: 1, draught: 0.5 }, 4, 0.5) // 0.5
 */
export function halfBreadthAt(form: HullForm, x: number, z: number): number {
  const pieces = new Float64Array(PIECE * MOST_PIECES);
  const count = makeHull(form).sectionAt(x, pieces);
  for (let i = 0; i < count; i += 1) {
    const at = PIECE * i;
    if (z >= pieces[at]! && z <= pieces[at + 1]!) return halfBreadthOf(pieces, i, z);
  }
  return 0;
}

/** Half-breadth of one piece of a section at a height that it holds [m], never below nought. */
export function halfBreadthOf(section: Float64Array, piece: number, z: number): number {
  const at = PIECE * piece + 2;
  return Math.max(0, section[at]! + z * (section[at + 1]! + z * section[at + 2]!));
}
