import { nth } from "#base";

/** A fitting's loss coefficient as published. */
export interface FittingLoss {
  readonly id: string;
  readonly name: string;
  /** K in h = K v²/2g [1]. */
  readonly k: number;
  readonly source: string;
}

const EPA = "EPANET 2.2 User Manual (EPA/600/R-20/133), chapter 3, minor losses";
const SANKS = "R. L. Sanks (ed.), Pumping Station Design, tables B-6 and B-7";

/**
 * Loss coefficients of fittings found on portable pumps. Published values spread by 20 to 50 %; where the maker
 * gives one, use it. No value is given for cam couplings: no citable one was found.
 */
export const FITTING_LOSSES: readonly FittingLoss[] = [
  { id: "swing-check-valve", name: "swing check valve, open", k: 2.5, source: EPA },
  { id: "short-elbow", name: "90° elbow, short radius", k: 0.9, source: EPA },
  { id: "elbow-45", name: "45° elbow", k: 0.4, source: EPA },
  { id: "square-entrance", name: "entrance, flush and sharp", k: 0.5, source: EPA },
  { id: "exit", name: "exit", k: 1, source: EPA },
  { id: "projecting-entrance", name: "entrance, hose end projecting", k: 0.78, source: "Crane TP-410" },
  { id: "rounded-entrance", name: "entrance, rounded", k: 0.25, source: SANKS },
  { id: "flanged-elbow", name: "90° elbow, flanged", k: 0.25, source: SANKS },
  { id: "long-flanged-elbow", name: "90° elbow, flanged, long radius", k: 0.18, source: SANKS },
  { id: "foot-valve-hinged", name: "foot valve, hinged disc", k: 1.2, source: SANKS },
];

/**
 * Loss coefficient of a valve from its equivalent length, K = N·f_T.
 *
 * @param equivalentLength - in bores, [1]: poppet foot valve with strainer 420, swing check 100 or 50
 * @param turbulentFriction - friction factor in fully rough flow at this bore, [1]
 * @returns K, [1]
 * @range fully turbulent flow
 * @source Crane TP-410, 2009
 * @example equivalentLengthLoss(420, 0.01721325) // ≈ 7.23
 */
export function equivalentLengthLoss(equivalentLength: number, turbulentFriction: number): number {
  return equivalentLength * turbulentFriction;
}

/**
 * Loss coefficient of a sudden widening, on the velocity before it: K = (1 − A1/A2)².
 *
 * @param bore - before, [m]
 * @param wider - after, [m], at least `bore`
 * @returns K on the velocity before, [1]
 * @range turbulent flow
 * @source Borda-Carnot, as in Streeter and Wylie 1975
 * @example wideningLoss(0.0508, 0.1016) // 0.5625
 */
export function wideningLoss(bore: number, wider: number): number {
  return (1 - (bore / wider) ** 2) ** 2;
}

/** Area left by the jet in a sudden narrowing, against A2/A1. */
const CONTRACTION = [
  [0.1, 0.624],
  [0.2, 0.632],
  [0.3, 0.643],
  [0.4, 0.659],
  [0.5, 0.681],
  [0.6, 0.712],
  [0.7, 0.755],
  [0.8, 0.813],
  [0.9, 0.892],
  [1, 1],
] as const;

/**
 * Loss coefficient of a sudden narrowing, on the velocity after it: K = (1/Cc − 1)², Cc from a table.
 *
 * @param areaRatio - A2/A1, [1], more than 0, at most 1
 * @returns K on the velocity after, [1]
 * @range turbulent flow; below A2/A1 = 0.1 the first table value stands
 * @source contraction table of Streeter and Wylie 1975, straight between its rows
 * @example narrowingLoss(0.5) // ≈ 0.219
 */
export function narrowingLoss(areaRatio: number): number {
  const next = CONTRACTION.findIndex(([ratio]) => ratio >= areaRatio);
  const [highRatio, high] = nth(CONTRACTION, next === -1 ? CONTRACTION.length - 1 : next);
  const [lowRatio, low] = nth(CONTRACTION, Math.max(0, next - 1));
  const share = highRatio === lowRatio ? 1 : (areaRatio - lowRatio) / (highRatio - lowRatio);
  const contraction = low + Math.min(1, Math.max(0, share)) * (high - low);
  return (1 / contraction - 1) ** 2;
}

/**
 * Fire service friction coefficients by nominal bore [inch]: psi for each 100 ft at 100 US gpm.
 *
 * @source list commonly published in fire service handbooks (IFSTA); lists disagree: 1.75 in is 15.5 here and 10 in
 *   another. Lined delivery hose only, not hard or corrugated suction hose.
 */
export const FIRE_HOSE_COEFFICIENTS: Readonly<Record<string, number>> = {
  "0.75": 1100,
  "1": 150,
  "1.25": 80,
  "1.5": 24,
  "1.75": 15.5,
  "2": 8,
  "2.5": 2,
  "3": 0.8,
  "3.5": 0.34,
  "4": 0.2,
  "4.5": 0.1,
  "5": 0.08,
};
