import { nth } from "#base";
import { findRoot } from "#numerics";
import { likelyGravityHeight } from "./body.ts";
import { makeBalance, type Balance, type Lever } from "./equilibrium.ts";
import { makeHull } from "./hull-form.ts";
import type { FloatingVessel } from "./vessel.ts";

/** One point of a curve of righting levers. */
export interface LeverPoint {
  /** To starboard [rad]. */
  readonly heel: number;
  /** [m]; negative where she goes on over. */
  readonly lever: number;
}

export type RightingCurve =
  | {
      readonly kind: "afloat";
      /** At the heels asked for, in their order; those at which she cannot lie are left out. */
      readonly curve: readonly LeverPoint[];
      /** Greatest lever to the side asked about. */
      readonly greatest: LeverPoint;
      /** Heel beyond the greatest lever at which none is left [rad]; absent where some is left at the steepest looked at. */
      readonly vanishing?: number;
      /** Area under the curve from upright to 30 and to 40 degrees [m·rad]; absent where she cannot lie so far over. */
      readonly areaTo: { readonly 30?: number; readonly 40?: number };
      /** From this heel on no trim holds her by itself, and it is taken as it last was [rad]; absent where one does. */
      readonly trimHeldFrom?: number;
      /** Upright, floodwater free to move [m]. */
      readonly gm: number;
      /** Displaced, floodwater's weight included [m³]. */
      readonly volume: number;
    }
  | { readonly kind: "founders"; readonly because: string };

const DEGREE = Math.PI / 180;
/** Steepest heel looked at [degrees], and steps of the curve on the way. */
const STEEPEST = 75;
const STEPS_PER_DEGREE = 2;

/**
 * Righting levers of a boat with water in her: held at each heel, draught and trim free, displacement constant, the
 * floodwater level in its own space. Where no trim holds her any more, by a high centre of gravity or much loose water, the
 * trim is held as it last was.
 *
 * GZ = M_y/V over density and gravity, with M = V·B − V₀·G − Σw·c taken about the water's plane
 *
 * @param vessel - a valid boat with levels or volumes of water in its compartments, lengths in [m]
 * @param heels - at which the curve is wanted, starboard positive, within ±75° [rad]
 * @returns levers [m], areas [m·rad], heels [rad]
 * @range the deck holds water out, openings stay shut, nothing shifts; still water
 * @source GZ and the wall-sided formula: Barrass & Derrett, Ship Stability for Masters and Mates, ch. 14; areas to 30° and
 *   40° after IMO 2008 Intact Stability Code, part A 2.2 (FROM MEMORY); integrals DERIVED
 * @example rightingOf({ kind: "floating", hull: { form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 }, kg: 0.6,
 *   compartments: [] }, [0.1]).gm // 0.5547...
 */
export function rightingOf(vessel: FloatingVessel, heels: readonly number[]): RightingCurve {
  const { balance, water } = loadedWith(vessel);
  const upright = balance.holdAt(0, water);
  if (upright === undefined)
    return { kind: "founders", because: "boat and floodwater together weigh more than the whole hull displaces" };
  const side = heels.length > 0 && heels.every((heel) => heel <= 0) && heels.some((heel) => heel < 0) ? -1 : 1;
  const way = wayOver(balance, water, side);
  const greatest = greatestOf(balance, water, way, side);
  const vanishing = vanishingOf(balance, water, way, greatest, side);
  const held = way.find(({ isTrimHeld }) => isTrimHeld)?.heel;
  return {
    kind: "afloat",
    ...(held === undefined ? {} : { trimHeldFrom: held }),
    curve: curveAt(balance, water, heels),
    greatest,
    ...(vanishing === undefined ? {} : { vanishing }),
    areaTo: areasOf(way, side),
    gm: upright.stiffness / upright.volume,
    volume: upright.volume,
  };
}

function loadedWith(vessel: FloatingVessel): { readonly balance: Balance; readonly water: readonly number[] } {
  const hull = makeHull(vessel.hull);
  const draught = vessel.draught ?? hull.draught;
  const balance = makeBalance({
    hull,
    dry: { draught, trim: vessel.trim ?? 0 },
    kg: vessel.kg ?? likelyGravityHeight(hull, draught),
    compartments: vessel.compartments,
  });
  const water = vessel.compartments.map((space, i) => space.water ?? balance.waterUnder(i, space.level ?? 0));
  return { balance, water };
}

function curveAt(balance: Balance, water: readonly number[], heels: readonly number[]): LeverPoint[] {
  const levers = balance.leversAt(water, heels);
  return heels.flatMap((heel, i) => (levers[i] === undefined ? [] : [{ heel, lever: levers[i].lever }]));
}

/** The whole way over in small steps, as far as she can lie so. */
function wayOver(balance: Balance, water: readonly number[], side: number): (LeverPoint & Lever)[] {
  const count = STEEPEST * STEPS_PER_DEGREE + 1;
  const heels = Array.from({ length: count }, (_, k) => (side * k * DEGREE) / STEPS_PER_DEGREE);
  const levers = balance.leversAt(water, heels);
  return heels.flatMap((heel, k) => (levers[k] === undefined ? [] : [{ heel, ...levers[k] }]));
}

/** A righting lever rights to the other side: to port it is negative. */
const ofSide = ({ heel, lever }: LeverPoint, side: number): LeverPoint => ({ heel, lever: side * lever });

function greatestOf(balance: Balance, water: readonly number[], way: readonly LeverPoint[], side: number): LeverPoint {
  const coarse = most(way, side);
  const reach = DEGREE / STEPS_PER_DEGREE;
  const steps = Array.from({ length: 41 }, (_, k) => coarse.heel + (reach * (k - 20)) / 20);
  const near = steps.filter((heel) => heel * side >= 0 && Math.abs(heel) <= STEEPEST * DEGREE);
  return most([coarse, ...curveAt(balance, water, near)], side);
}

function most(points: readonly LeverPoint[], side: number): LeverPoint {
  return points.map((point) => ofSide(point, side)).reduce((best, one) => (one.lever > best.lever ? one : best));
}

function vanishingOf(
  balance: Balance,
  water: readonly number[],
  way: readonly LeverPoint[],
  greatest: LeverPoint,
  side: number,
): number | undefined {
  if (!(greatest.lever > 0)) return undefined;
  const beyond = way.filter(({ heel }) => Math.abs(heel) > Math.abs(greatest.heel));
  const first = beyond.findIndex(({ lever }) => side * lever <= 0);
  if (first < 0) return undefined;
  const low = first === 0 ? greatest.heel : nth(beyond, first - 1).heel;
  const leverAt = (heel: number): number => balance.leversAt(water, [heel])[0]?.lever ?? Number.NaN;
  const found = findRoot(leverAt, low, nth(beyond, first).heel, { rootTolerance: 1e-10 });
  return found.kind === "not-bracketed" ? nth(beyond, first).heel : found.root;
}

function areasOf(way: readonly LeverPoint[], side: number): { readonly 30?: number; readonly 40?: number } {
  const [to30, to40] = [30, 40].map((degrees) => areaTo(way, degrees, side));
  return { ...(to30 === undefined ? {} : { 30: to30 }), ...(to40 === undefined ? {} : { 40: to40 }) };
}

/** Simpson's rule over the steps of the way. */
function areaTo(way: readonly LeverPoint[], degrees: number, side: number): number | undefined {
  const last = degrees * STEPS_PER_DEGREE;
  if (way.length <= last) return undefined;
  let sum = 0;
  for (let k = 0; k <= last; k += 1) sum += (k === 0 || k === last ? 1 : k % 2 === 1 ? 4 : 2) * nth(way, k).lever;
  return (side * sum * DEGREE) / STEPS_PER_DEGREE / 3;
}
