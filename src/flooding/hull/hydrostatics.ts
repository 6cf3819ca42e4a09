import { assert, numberAt } from "#base";
import { A, AX, AY, INTEGRALS, IXX, IYY, makeGauge, MX, MY, MZ, V, type Plane, type Window } from "./hull-integrals.ts";
import type { Hull } from "./hull-form.ts";

/** Density taken for sea water where none is given [kg/m³]: common practice in stability work. */
export const SEA_WATER = 1025;

/** The whole hull. */
export const EVERYWHERE: Window = {
  x0: Number.NEGATIVE_INFINITY,
  x1: Number.POSITIVE_INFINITY,
  y0: Number.NEGATIVE_INFINITY,
  y1: Number.POSITIVE_INFINITY,
  z0: Number.NEGATIVE_INFINITY,
  z1: Number.POSITIVE_INFINITY,
};

/** How a boat lies in the water. */
export interface Attitude {
  /** Amidships, on the centre line [m]. */
  readonly draught: number;
  /** To starboard [rad], within ±75°. */
  readonly heel?: number;
  /** Draught aft less draught forward [m]. */
  readonly trim?: number;
}

export interface Hydrostatics {
  /** Displaced [m³]. */
  readonly volume: number;
  /** [kg] */
  readonly displacement: number;
  /** Centre of buoyancy: forward of the after end, to starboard, above the keel [m]. */
  readonly lcb: number;
  readonly tcb: number;
  readonly kb: number;
  /** Transverse and longitudinal metacentric radius [m]. */
  readonly bm: number;
  readonly bmLong: number;
  /** In the water's own plane [m²]. */
  readonly waterplaneArea: number;
  /** Centre of flotation forward of the after end [m]. */
  readonly lcf: number;
  /** Metacentre above the centre of gravity [m], where KG is given. */
  readonly gm?: number;
}

/** The plane of the water for a boat lying so. */
export function planeOf(hull: Hull, attitude: Attitude): Plane {
  const slopeX = -(attitude.trim ?? 0) / hull.length;
  const slopeY = Math.tan(attitude.heel ?? 0);
  return { height: attitude.draught - (slopeX * hull.length) / 2, slopeX, slopeY };
}

/**
 * Volume, centres and metacentric radii of a hull lying at a draught, heel and trim.
 *
 * V = ∫A(x) dx; KB = ∫z dV / V; BM = I_T / V; BM_L = I_L / V; GM = KB + BM − KG when upright
 *
 * @param hull - the hull, see `makeHull`
 * @param attitude - draught [m], heel [rad], trim [m]
 * @param more - `kg` height of the centre of gravity above the keel [m]; `density` of the water [kg/m³]
 * @returns hydrostatics, in the units of {@link Hydrostatics}
 * @range heel within ±75°; sections are closed at the deck
 * @source Barrass & Derrett, Ship Stability for Masters and Mates (definitions); integrals DERIVED
 * @example
 * const box = makeHull({ form: "box", length: 9, beam: 2.6, depth: 1.4, draught: 0.7 });
 * measureHydrostatics(box, { draught: 0.7 }).bm // 0.80476
 */
export function measureHydrostatics(
  hull: Hull,
  attitude: Attitude,
  more: { readonly kg?: number; readonly density?: number } = {},
): Hydrostatics {
  const plane = planeOf(hull, attitude);
  const m = makeGauge(hull).measure(plane, EVERYWHERE, new Float64Array(INTEGRALS));
  assert(numberAt(m, V) > 0, "hydrostatics need some draught");
  const area = numberAt(m, A) > 0 ? numberAt(m, A) : Number.MIN_VALUE;
  const [secantX, secantY] = [Math.hypot(1, plane.slopeX), Math.hypot(1, plane.slopeY)];
  const radii = {
    bm: ((numberAt(m, IYY) - numberAt(m, AY) ** 2 / area) * secantY ** 3) / numberAt(m, V),
    bmLong: ((numberAt(m, IXX) - numberAt(m, AX) ** 2 / area) * secantX ** 3) / numberAt(m, V),
  };
  const kb = numberAt(m, MZ) / numberAt(m, V);
  const tcb = numberAt(m, MY) / numberAt(m, V);
  return {
    volume: numberAt(m, V),
    displacement: numberAt(m, V) * (more.density ?? SEA_WATER),
    lcb: numberAt(m, MX) / numberAt(m, V),
    tcb,
    kb,
    ...radii,
    waterplaneArea: numberAt(m, A) * Math.hypot(1, plane.slopeX, plane.slopeY),
    lcf: numberAt(m, AX) / area,
    ...(more.kg === undefined ? {} : { gm: radii.bm - (more.kg - kb + tcb * plane.slopeY) / secantY }),
  };
}

/** A place in the boat, forward of the after end and to starboard [m]. */
export interface PointInBoat {
  readonly x: number;
  readonly y?: number;
}

/**
 * How much the sea rises against the boat at one place for each cubic metre of water taken in at another, at small
 * angles: 1/A_w + (x − x_F)(x_w − x_F)/I_L.
 *
 * @param hull - the hull
 * @param attitude - how she lies now
 * @param places - `water` where the water stands, `seen` where the sea's level is seen
 * @returns rise per volume [m⁻²]; negative where the boat lifts
 * @range small trim; heel left out
 * @source Barrass & Derrett, Ship Stability for Masters and Mates (sinkage and trim); DERIVED
 * @example riseWithWater(makeHull({ form: "box", length: 9, beam: 2.8, depth: 1.4, draught: 0.7 }),
 *   { draught: 0.7 }, { water: { x: 1.5 }, seen: { x: 8.5 } }) // -0.030864
 */
export function riseWithWater(
  hull: Hull,
  attitude: Attitude,
  places: { readonly water: PointInBoat; readonly seen: PointInBoat },
): number {
  const { lcf, bmLong, volume, waterplaneArea } = measureHydrostatics(hull, attitude);
  return 1 / waterplaneArea + ((places.seen.x - lcf) * (places.water.x - lcf)) / (bmLong * volume);
}
