import { PERMEABILITIES } from "./compartment.ts";
import type { Compartment } from "./compartment.ts";
import type { HullForm } from "./hull-form.ts";

/** Kinds of boat told apart. */
export type BoatKind = "open boat" | "motor boat" | "sailing yacht" | "fishing boat";

/** Hull proportions of a kind: draught of hull and depth over length, block coefficient. */
export interface BoatShape {
  readonly draught: number;
  readonly depth: number;
  readonly block: number;
}

/** Proportions by kind, keels and skegs left out. This program's judgement: docs/methods/flooding.md. */
export const BOAT_SHAPES: Readonly<Record<BoatKind, BoatShape>> = {
  "open boat": { draught: 0.06, depth: 0.13, block: 0.45 },
  "motor boat": { draught: 0.075, depth: 0.17, block: 0.42 },
  "sailing yacht": { draught: 0.065, depth: 0.16, block: 0.38 },
  "fishing boat": { draught: 0.11, depth: 0.2, block: 0.52 },
};

/**
 * Beam of small craft by length: B = 0.72·L^0.67.
 *
 * @param length - [m]
 * @returns beam [m], within a fifth for most boats of 4 to 20 m
 * @source this program's judgement
 */
export function likelyBeam(length: number): number {
  return 0.72 * length ** 0.67;
}

/**
 * A hull for a boat of which little is known: what is given stands, the rest follows from kind and length.
 *
 * @param boat - `kind`, `length` [m]; `beam`, `depth`, `draught` of the hull [m] where they are known
 * @returns a hull of the form family
 * @range boats of 3 to 40 m; where nothing but the length is known, volumes are good to about a third
 * @source this program's judgement, docs/methods/flooding.md
 * @example likelyHull({ kind: "motor boat", length: 10 }).draught // 0.75
 */
export function likelyHull(boat: {
  readonly kind: BoatKind;
  readonly length: number;
  readonly beam?: number;
  readonly depth?: number;
  readonly draught?: number;
}): Extract<HullForm, { form: "family" }> {
  const shape = BOAT_SHAPES[boat.kind];
  const draught = boat.draught ?? Math.min(shape.draught * boat.length, 0.8 * (boat.depth ?? Infinity));
  return {
    form: "family",
    length: boat.length,
    beam: boat.beam ?? likelyBeam(boat.length),
    depth: Math.max(boat.depth ?? shape.depth * boat.length, 1.1 * draught),
    draught,
    blockCoefficient: shape.block,
  };
}

/** What a space is filled with, and which part of the length it takes. */
export interface LikelySpace {
  readonly name: string;
  readonly sort: "engine-room" | "cabin" | "hold" | "open";
  readonly part: "aft" | "middle" | "forward" | "whole";
}

const PARTS: Readonly<Record<LikelySpace["part"], readonly [from: number, to: number]>> = {
  aft: [0, 0.36],
  middle: [0.36, 0.66],
  forward: [0.66, 1],
  whole: [0, 1],
};

const FILLED: Readonly<Record<LikelySpace["sort"], number>> = {
  "engine-room": PERMEABILITIES.machinery,
  cabin: PERMEABILITIES.accommodation,
  hold: PERMEABILITIES.stores,
  open: PERMEABILITIES.void,
};

/**
 * A compartment from words: which third of the boat, and what is in it.
 *
 * @param space - name, sort and part
 * @param length - of the boat [m]
 * @returns the compartment, from the keel up
 * @source permeabilities: 46 CFR 172.240; the thirds: this program's judgement
 * @example likelyCompartment({ name: "cabin", sort: "cabin", part: "forward" }, 10).from // 6.6
 */
export function likelyCompartment(space: LikelySpace, length: number): Compartment {
  const [from, to] = PARTS[space.part];
  return { name: space.name, from: from * length, to: to * length, permeability: FILLED[space.sort] };
}
