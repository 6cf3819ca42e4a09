/** Below this Reynolds number flow is laminar; above the second it is turbulent; between, the two are joined. */
export const LAMINAR_BELOW = 2000;
export const TURBULENT_ABOVE = 4000;

const TWO_OVER_LN10 = 2 / Math.LN10;

/** A formula for the Darcy friction factor of turbulent flow, with its slope against Reynolds number. */
export interface TurbulentFriction {
  readonly factor: (reynolds: number, relativeRoughness: number) => number;
  readonly slope: (reynolds: number, relativeRoughness: number, factor: number) => number;
}

/** Where the search for 1/√f begins: f = 0.02, the middle of what hoses have. */
const FIRST_GUESS = 7;

/**
 * Darcy friction factor of turbulent flow, solved to 1e-12.
 *
 * 1/√f = −2 log10(ε/(3.7 D) + 2.51/(Re √f)), by Halley's method on x = 1/√f. Its error goes with the cube of the
 * step, so that after a step of 1e-5 nothing above rounding is left.
 *
 * @param reynolds - [1], at least 2000
 * @param relativeRoughness - ε/D, [1], 0 to 0.1
 * @returns friction factor, [1]
 * @range Re 2000 to 1e9, ε/D up to 0.1
 * @source C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133-156
 * @example colebrookFriction(100_000, 1e-4) // ≈ 0.018513866
 */
export function colebrookFriction(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = FIRST_GUESS;
  for (let step = 0; step < 20; step += 1) {
    const inside = rough + smooth * x;
    const bend = smooth / inside;
    const slope = 1 + TWO_OVER_LN10 * bend;
    const newton = (x + TWO_OVER_LN10 * Math.log(inside)) / slope;
    const change = newton / (1 + (newton * TWO_OVER_LN10 * bend * bend) / (2 * slope));
    x -= change;
    if (Math.abs(change) <= 1e-5 * x) break;
  }
  return 1 / (x * x);
}

/** Slope of {@link colebrookFriction} against Reynolds number, by implicit differentiation. */
function colebrookSlope(reynolds: number, relativeRoughness: number, factor: number): number {
  const x = 1 / Math.sqrt(factor);
  const smooth = 2.51 / reynolds;
  const weight = (TWO_OVER_LN10 * smooth) / (relativeRoughness / 3.7 + smooth * x);
  const xSlope = (weight * x) / reynolds / (1 + weight);
  return -2 * factor * Math.sqrt(factor) * xSlope;
}

/**
 * Darcy friction factor of turbulent flow, explicit.
 *
 * f = 0.25 / [log10(ε/(3.7 D) + 5.74/Re^0.9)]²
 *
 * @param reynolds - [1]
 * @param relativeRoughness - ε/D, [1]
 * @returns friction factor, [1]
 * @range Re 5000 to 1e8, ε/D 1e-6 to 0.01; within about 1 % of Colebrook-White there, 3 % at the edges
 * @source P. K. Swamee and A. K. Jain, J. Hydraulics Div. ASCE 102 (1976) 657-664, as used by the EPA network model
 * @example swameeJainFriction(1e6, 5e-5) // ≈ 0.0126855
 */
export function swameeJainFriction(reynolds: number, relativeRoughness: number): number {
  return 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

function swameeJainSlope(reynolds: number, relativeRoughness: number, factor: number): number {
  const smooth = 5.74 / reynolds ** 0.9;
  const logarithm = Math.log10(relativeRoughness / 3.7 + smooth);
  return (1.8 * factor * smooth) / (reynolds * Math.LN10 * logarithm * (relativeRoughness / 3.7 + smooth));
}

/** Colebrook-White, what this program uses. */
export const COLEBROOK: TurbulentFriction = { factor: colebrookFriction, slope: colebrookSlope };
/** Swamee-Jain, for comparison with programs that use it. */
export const SWAMEE_JAIN: TurbulentFriction = { factor: swameeJainFriction, slope: swameeJainSlope };

/**
 * Darcy friction factor at every Reynolds number, without a jump: 64/Re below 2000, the turbulent law above 4000,
 * and between them the cubic that meets both with their slopes.
 *
 * @range Re above 0; between 2000 and 4000 no formula is trustworthy, this one is only smooth
 * @source the join is the one E. Dunlop gave for the EPA network model (EPANET 2.2 User Manual, ch. 12), here for any law
 * @example new FrictionFactor(1e-4).at(1000) // 0.064
 */
export class FrictionFactor {
  readonly #relativeRoughness: number;
  readonly #law: TurbulentFriction;
  #join: readonly [number, number, number] | undefined;

  /**
   * @param relativeRoughness - ε/D, [1], 0 to 0.1
   * @param law - turbulent law; default Colebrook-White
   */
  constructor(relativeRoughness: number, law: TurbulentFriction = COLEBROOK) {
    this.#relativeRoughness = relativeRoughness;
    this.#law = law;
  }

  /** The factor [1] at a Reynolds number [1] above 0. */
  at(reynolds: number): number {
    if (reynolds >= TURBULENT_ABOVE) return this.#law.factor(reynolds, this.#relativeRoughness);
    if (reynolds <= LAMINAR_BELOW) return 64 / reynolds;
    this.#join ??= cubicJoin(this.#law, this.#relativeRoughness);
    const [c1, c2, c3] = this.#join;
    const t = (reynolds - LAMINAR_BELOW) / JOIN_WIDTH;
    return LAMINAR_END + t * (c1 + t * (c2 + t * c3));
  }
}

const JOIN_WIDTH = TURBULENT_ABOVE - LAMINAR_BELOW;
const LAMINAR_END = 64 / LAMINAR_BELOW;

/** Coefficients of the cubic in t = (Re − 2000)/2000 that meets 64/Re and the turbulent law with their slopes. */
function cubicJoin(law: TurbulentFriction, relativeRoughness: number): readonly [number, number, number] {
  const high = law.factor(TURBULENT_ABOVE, relativeRoughness);
  const highSlope = JOIN_WIDTH * law.slope(TURBULENT_ABOVE, relativeRoughness, high);
  const lowSlope = (-JOIN_WIDTH * LAMINAR_END) / LAMINAR_BELOW;
  const rise = high - LAMINAR_END;
  return [lowSlope, 3 * rise - 2 * lowSlope - highSlope, lowSlope + highSlope - 2 * rise];
}
