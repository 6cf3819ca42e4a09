/** Below this Reynolds number flow is laminar; above the second it is turbulent; between, the two are joined. */
export const LAMINAR_BELOW = 2000;
export const TURBULENT_ABOVE = 4000;

const TWO_OVER_LN10 = 2 / Math.LN10;

/** A formula for the Darcy friction factor of turbulent flow, with its slope against Reynolds number. */
export interface TurbulentFriction {
  readonly factor: (reynolds: number, relativeRoughness: number) => number;
  readonly slope: (reynolds: number, relativeRoughness: number, factor: number) => number;
}

/**
 * Darcy friction factor of turbulent flow, solved to 1e-12.
 *
 * 1/√f = −2 log10(ε/(3.7 D) + 2.51/(Re √f)), by Newton's method on x = 1/√f from Haaland's explicit form
 *
 * @param reynolds - [1], at least 2000
 * @param relativeRoughness - ε/D, [1], 0 to 0.1
 * @returns friction factor, [1]
 * @range Re 2000 to 1e9, ε/D up to 0.1
 * @source C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133-156; start: S. E. Haaland, J. Fluids Eng. 105 (1983) 89-90
 * @example colebrookFriction(100_000, 1e-4) // ≈ 0.018513866
 */
export function colebrookFriction(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = -0.9 * TWO_OVER_LN10 * Math.log(rough ** 1.11 + 6.9 / reynolds);
  for (let step = 0; step < 20; step += 1) {
    const inside = rough + smooth * x;
    const miss = x + TWO_OVER_LN10 * Math.log(inside);
    const change = miss / (1 + (TWO_OVER_LN10 * smooth) / inside);
    x -= change;
    if (Math.abs(change) <= 1e-13 * x) break;
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
 * @param relativeRoughness - ε/D, [1], 0 to 0.1
 * @param law - turbulent law; default Colebrook-White
 * @returns function of Reynolds number (more than 0), giving the friction factor, [1]
 * @range Re above 0; between 2000 and 4000 no formula is trustworthy, this one is only smooth
 * @source the join is the one E. Dunlop gave for the EPA network model (EPANET 2.2 User Manual, ch. 12), here for any law
 * @example frictionOf(1e-4)(1000) // 0.064
 */
export function frictionOf(
  relativeRoughness: number,
  law: TurbulentFriction = COLEBROOK,
): (reynolds: number) => number {
  let join: ((reynolds: number) => number) | undefined;
  return (reynolds) => {
    if (reynolds >= TURBULENT_ABOVE) return law.factor(reynolds, relativeRoughness);
    if (reynolds <= LAMINAR_BELOW) return 64 / reynolds;
    join ??= joinTo(law, relativeRoughness);
    return join(reynolds);
  };
}

function joinTo(law: TurbulentFriction, relativeRoughness: number): (reynolds: number) => number {
  const atTurbulent = law.factor(TURBULENT_ABOVE, relativeRoughness);
  const slopeThere = law.slope(TURBULENT_ABOVE, relativeRoughness, atTurbulent);
  return cubicJoin(64 / LAMINAR_BELOW, -64 / LAMINAR_BELOW ** 2, atTurbulent, slopeThere);
}

function cubicJoin(low: number, lowSlope: number, high: number, highSlope: number): (reynolds: number) => number {
  const width = TURBULENT_ABOVE - LAMINAR_BELOW;
  const c1 = width * lowSlope;
  const c2 = 3 * (high - low) - width * (2 * lowSlope + highSlope);
  const c3 = width * (lowSlope + highSlope) - 2 * (high - low);
  return (reynolds) => {
    const t = (reynolds - LAMINAR_BELOW) / width;
    return low + t * (c1 + t * (c2 + t * c3));
  };
}
