import { factorise, solveFactorised } from "#numerics";
import { makeTank, windowOf, type Compartment, type Tank } from "./compartment.ts";
import { EVERYWHERE, planeOf, type Attitude } from "./hydrostatics.ts";
import {
  A,
  AX,
  AY,
  INTEGRALS,
  IXX,
  IXY,
  IYY,
  makeGauge,
  MX,
  MY,
  MZ,
  V,
  type Gauge,
  type Plane,
} from "./hull-integrals.ts";
import type { Hull } from "./hull-form.ts";

/** A boat before the water came in. */
export interface Loading {
  readonly hull: Hull;
  /** As she floated dry. */
  readonly dry: Attitude;
  /** Height of the centre of gravity above the keel, dry [m]. */
  readonly kg: number;
  readonly compartments: readonly Compartment[];
}

/** tan of the greatest heel looked at, 75°. */
export const STEEPEST = Math.tan((75 * Math.PI) / 180);
const NEWTON_STEPS = 25;
/** A step so small, of the depth, is the last: what it leaves is the square of it. */
const LAST_STEP = 1e-7;

/** The plane sought, the boat dry, and work space. One per balance. */
export interface Work {
  readonly hull: Hull;
  readonly gauge: Gauge;
  readonly tanks: readonly Tank[];
  readonly dry: { readonly volume: number; readonly x: number; readonly z: number };
  readonly capacity: number;
  readonly m: Float64Array;
  readonly residual: Float64Array;
  readonly jacobian: Float64Array;
  readonly step: Float64Array;
  /** Height, slopeX, slopeY. */
  readonly at: Float64Array;
  /** Spaces whose water is the sea's. */
  open: readonly boolean[];
}

/** Measures the boat dry and readies her spaces. */
export function beginWork(loading: Loading): Work {
  const gauge = makeGauge(loading.hull);
  const plane = planeOf(loading.hull, loading.dry);
  const m = gauge.measure(plane, EVERYWHERE, new Float64Array(INTEGRALS));
  const [volume, p] = [m[V]!, plane.slopeX];
  const dry = { volume, x: m[MX]! / volume + p * (m[MZ]! / volume - loading.kg), z: loading.kg };
  const full = gauge.measure({ height: 1e6, slopeX: 0, slopeY: 0 }, EVERYWHERE, new Float64Array(INTEGRALS));
  return {
    hull: loading.hull,
    gauge,
    tanks: loading.compartments.map((c) => makeTank(loading.hull, gauge, windowOf(c), c.permeability)),
    dry,
    capacity: full[V]!,
    m,
    residual: new Float64Array(3),
    jacobian: new Float64Array(9),
    step: new Float64Array(3),
    at: Float64Array.of(plane.height, plane.slopeX, 0),
    open: [],
  };
}

/** Volume displaced by boat and floodwater together [m³]. */
export function totalOf(work: Work, water: ArrayLike<number>): number {
  let total = work.dry.volume;
  for (let i = 0; i < work.tanks.length; i += 1) total += Math.max(0, water[i]!);
  return total;
}

/** Newton in height (1), height and trim (2) or height, trim and heel (3). False where it does not settle. */
export function converge(work: Work, water: ArrayLike<number>, unknowns: 1 | 2 | 3): boolean {
  const { at, step, hull } = work;
  for (let i = 0; i < NEWTON_STEPS; i += 1) {
    assess(work, water);
    if (!takeNewtonStep(work, unknowns)) return false;
    const size = Math.abs(step[0]!) + hull.length * (Math.abs(step[1]!) + Math.abs(step[2]!));
    if (size < LAST_STEP * hull.depth) return finishStep(work, water);
    if (Math.abs(at[2]!) > STEEPEST || Math.abs(at[1]!) > 1 || !Number.isFinite(size)) return false;
  }
  return false;
}

/** The last, tiny step is taken and everything measured there, so that levels and stiffness belong to it. */
function finishStep(work: Work, water: ArrayLike<number>): boolean {
  assess(work, water);
  return true;
}

function takeNewtonStep(work: Work, unknowns: 1 | 2 | 3): boolean {
  const matrix = new Float64Array(unknowns * unknowns);
  for (let i = 0; i < unknowns; i += 1) {
    for (let j = 0; j < unknowns; j += 1) matrix[i * unknowns + j] = work.jacobian[i * 3 + j]!;
  }
  const factors = factorise(matrix, unknowns);
  if (factors === undefined) return false;
  work.step.fill(0);
  solveFactorised(factors, (i) => -work.residual[i]!, work.step);
  limitStep(work);
  for (let i = 0; i < unknowns; i += 1) work.at[i]! += work.step[i]!;
  return true;
}

/** No step turns the boat by more than about 8°, about her own middle, or lifts her by more than a fifth of her depth. */
function limitStep(work: Work): void {
  const { step, hull } = work;
  const middle = step[0]! + (step[1]! * hull.length) / 2;
  const turn = Math.max(Math.abs(step[1]!), Math.abs(step[2]!)) / 0.15;
  const lift = Math.abs(middle) / (0.2 * hull.depth);
  const most = Math.max(turn, lift);
  if (most > 1) for (let i = 0; i < 3; i += 1) step[i]! /= most;
}

/** Measures hull and floodwater at the present plane; fills residual and Jacobian. */
function assess(work: Work, water: ArrayLike<number>): void {
  const { at, m, residual, jacobian, dry } = work;
  const plane: Plane = { height: at[0]!, slopeX: at[1]!, slopeY: at[2]! };
  work.gauge.measure(plane, EVERYWHERE, m);
  residual.fill(0);
  jacobian.fill(0);
  work.tanks.forEach((tank, i) => {
    if (work.open[i] === true) loseBuoyancy(work, tank, plane);
  });
  addSurfaceTerms(work, m, plane.height);
  const moments = [m[MX]! - dry.volume * dry.x, m[MY]!, m[MZ]! - dry.volume * dry.z] as [number, number, number];
  let volume = m[V]! - dry.volume;
  work.tanks.forEach((tank, i) => {
    if (work.open[i] !== true) volume -= loadTank(work, tank, Math.max(0, water[i]!), moments);
  });
  residual[0] = volume;
  residual[1] = moments[0] + plane.slopeX * moments[2];
  residual[2] = moments[1] + plane.slopeY * moments[2];
  jacobian[4]! += moments[2];
  jacobian[8]! += moments[2];
}

/** Takes an open space off the hull: what the sea fills does not carry. */
function loseBuoyancy(work: Work, tank: Tank, plane: Plane): void {
  work.gauge.measure(plane, tank.window, tank.integrals);
  tank.height = plane.height;
  for (let k = 0; k < INTEGRALS; k += 1) work.m[k]! -= tank.permeability * tank.integrals[k]!;
}

/** Takes a tank's water off the moments, its free surface off the Jacobian; returns the water's volume. */
function loadTank(work: Work, tank: Tank, water: number, moments: [number, number, number]): number {
  tank.fill(water, work.at[1]!, work.at[2]!);
  const { integrals } = tank;
  if (!(integrals[V]! > 0)) return 0;
  const share = water / integrals[V]!;
  moments[0] -= share * integrals[MX]!;
  moments[1] -= share * integrals[MY]!;
  moments[2] -= share * integrals[MZ]!;
  addFreeSurface(work, integrals, tank.permeability);
  return water;
}

/**
 * Changes of V, M_x + p·M_z and M_y + q·M_z with height, p and q of a surface:
 * dV = A, dM_x = ∫x dA and so on, dM_z = ∫z dA on the surface.
 */
function addSurfaceTerms(work: Work, s: Float64Array, height: number): void {
  const [p, q] = [work.at[1]!, work.at[2]!];
  const z = height * s[A]! + p * s[AX]! + q * s[AY]!;
  const zx = height * s[AX]! + p * s[IXX]! + q * s[IXY]!;
  const zy = height * s[AY]! + p * s[IXY]! + q * s[IYY]!;
  const j = work.jacobian;
  j[0]! += s[A]!;
  j[1]! += s[AX]!;
  j[2]! += s[AY]!;
  j[3]! += s[AX]! + p * z;
  j[4]! += s[IXX]! + p * zx;
  j[5]! += s[IXY]! + p * zy;
  j[6]! += s[AY]! + q * z;
  j[7]! += s[IXY]! + q * zx;
  j[8]! += s[IYY]! + q * zy;
}

/** A free surface turns about its own centre: its height gives way so that its volume stays. */
function addFreeSurface(work: Work, s: Float64Array, permeability: number): void {
  if (!(s[A]! > 0)) return;
  const [x, y] = [s[AX]! / s[A]!, s[AY]! / s[A]!];
  const [xx, xy, yy] = [s[IXX]! - x * s[AX]!, s[IXY]! - x * s[AY]!, s[IYY]! - y * s[AY]!];
  const [p, q] = [work.at[1]!, work.at[2]!];
  const [zx, zy] = [p * xx + q * xy, p * xy + q * yy];
  const j = work.jacobian;
  j[4]! -= permeability * (xx + p * zx);
  j[5]! -= permeability * (xy + p * zy);
  j[7]! -= permeability * (xy + q * zx);
  j[8]! -= permeability * (yy + q * zy);
}

/** Righting stiffness with draught and trim free to follow: the Schur complement of the heel entry. */
export function heelStiffness(work: Work): number {
  const j = work.jacobian;
  const det = j[0]! * j[4]! - j[1]! * j[3]!;
  if (!(Math.abs(det) > 0)) return j[8]!;
  const a = (j[2]! * j[4]! - j[1]! * j[5]!) / det;
  const b = (j[0]! * j[5]! - j[3]! * j[2]!) / det;
  return j[8]! - j[6]! * a - j[7]! * b;
}
