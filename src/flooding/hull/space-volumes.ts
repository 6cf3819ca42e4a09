import { windowOf, type Compartment } from "./compartment.ts";
import { makeHull, type HullForm } from "./hull-form.ts";
import { EVERYWHERE, planeOf, type Attitude } from "./hydrostatics.ts";
import { A, INTEGRALS, makeGauge, V } from "./hull-integrals.ts";

/**
 * What each space of a boat holds up to her deck edge: permeability × the volume inside its limits and the shell.
 *
 * @param form - the hull, valid, lengths in [m]
 * @param spaces - limits in [m]; permeability as a share
 * @returns one volume a space [m³]; 0 where it lies outside the shell
 * @source DERIVED: docs/methods/flooding.md, "Volumes and moments"
 * @example spaceVolumes({ form: "box", length: 9, beam: 2, depth: 1, draught: 0.5 },
 *   [{ name: "hold", from: 0, to: 3, permeability: 0.5 }]) // [3]
 */
export function spaceVolumes(form: HullForm, spaces: readonly Compartment[]): readonly number[] {
  const gauge = makeGauge(makeHull(form));
  const covered = { height: 1e6, slopeX: 0, slopeY: 0 };
  return spaces.map((space) => {
    const inside = gauge.measure(covered, windowOf(space), new Float64Array(INTEGRALS))[V]!;
    return inside * space.permeability;
  });
}

/**
 * Whether a hull lying so has water to carry her and a side left above it: without either there are no hydrostatics.
 *
 * @param form - the hull, valid, lengths in [m]
 * @param attitude - draught [m], heel [rad], trim [m]
 * @returns `out` of the water, `under` it, or `floating`
 * @source DERIVED
 * @example immersionOf({ form: "box", length: 9, beam: 2, depth: 1, draught: 0.5 }, { draught: 0.5 }) // "floating"
 */
export function immersionOf(form: HullForm, attitude: Attitude): "out" | "floating" | "under" {
  const hull = makeHull(form);
  const m = makeGauge(hull).measure(planeOf(hull, attitude), EVERYWHERE, new Float64Array(INTEGRALS));
  const size = hull.length * hull.beam;
  if (!(m[V]! > LEAST * size * hull.depth)) return "out";
  return m[A]! > LEAST * size ? "floating" : "under";
}

/** Less than this share of a hull is none of it. */
const LEAST = 1e-7;
