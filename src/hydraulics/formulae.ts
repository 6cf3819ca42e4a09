import { STANDARD_GRAVITY } from "#water";
import { COLEBROOK, type TurbulentFriction } from "./friction.ts";

/** Constants and laws of hose friction that differ between programs; everything else is the same everywhere. */
export interface Formulae {
  /** [m/s²] */
  readonly gravity: number;
  readonly turbulent: TurbulentFriction;
  /** h = coefficient · L · Q^1.852 / (C^1.852 · D^boreExponent), SI. */
  readonly hazenWilliams: { readonly coefficient: number; readonly boreExponent: number };
}

/**
 * What this program computes with.
 *
 * @source Hazen-Williams in SI: 10.67 L Q^1.852/(C^1.852 D^4.8704), common practice
 */
export const STANDARD_FORMULAE: Formulae = {
  gravity: STANDARD_GRAVITY,
  turbulent: COLEBROOK,
  hazenWilliams: { coefficient: 10.67, boreExponent: 4.8704 },
};

/** Exponent of flow in the Hazen-Williams formula. */
export const HAZEN_WILLIAMS_EXPONENT = 1.852;
