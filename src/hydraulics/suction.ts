import { type Fault, nth } from "#base";
import { monotoneCubic, type Curve } from "#numerics";
import { STANDARD_GRAVITY, STANDARD_PRESSURE, waterDensity, waterVapourPressure } from "#water";
import { HYDRAULIC_LIMITS, checkLimit } from "./limits.ts";
import { explainPoint, isSoundPoint, type PumpPoint } from "./pump-curve.ts";

/** Practice for lifts: loss is plain above the first [m], suction beyond the second is not attempted [m]. */
export const PRACTICE_LIFT = { plainLossAbove: 4.6, notBeyond: 7.6 } as const;

/**
 * Net positive suction head available, NPSHa = (p − p_v)/(ρ g) − z − h_s.
 *
 * @param airPressure - on the water's surface, [Pa]
 * @param water - vapour pressure [Pa] and density [kg/m³]
 * @param lift - pump above the water's surface z, [m]; negative where it is below
 * @param suctionLoss - head lost in the suction hose h_s, [m]
 * @param gravity - [m/s²]
 * @returns head above boiling at the pump's inlet, [m]; negative means the water would boil
 * @range steady flow
 * @source definition (Hydraulic Institute; any pump text)
 * @example npshAvailable(101_325, { density: 1025.97, vapourPressure: 1705.7 }, 3, 1.2) // ≈ 5.70
 */
export function npshAvailable(
  airPressure: number,
  water: { readonly density: number; readonly vapourPressure: number },
  lift: number,
  suctionLoss: number,
  gravity: number = STANDARD_GRAVITY,
): number {
  return (airPressure - water.vapourPressure) / (water.density * gravity) - lift - suctionLoss;
}

/**
 * Greatest height of the pump above the water at one flow: z = (p − p_v)/(ρ g) − h_s − NPSHr.
 *
 * @param airPressure - [Pa]
 * @param water - vapour pressure [Pa] and density [kg/m³]
 * @param suctionLoss - [m]
 * @param npshRequired - [m]
 * @param gravity - [m/s²]
 * @returns greatest lift, [m]; negative means the pump must stand below the water
 * @range steady flow
 * @source definition
 */
export function greatestPumpHeight(
  airPressure: number,
  water: { readonly density: number; readonly vapourPressure: number },
  suctionLoss: number,
  npshRequired: number,
  gravity: number = STANDARD_GRAVITY,
): number {
  return npshAvailable(airPressure, water, 0, suctionLoss, gravity) - npshRequired;
}

/** What is known of a pump's suction side. */
export interface SuctionData {
  /** Flow [m³/s] and NPSH required [m] at rated speed. */
  readonly npshRequired?: readonly PumpPoint[];
  /** Greatest suction lift the maker states [m]. */
  readonly greatestLift?: number;
}

/** NPSH a pump requires against its flow, never falling. */
export interface NpshRequired {
  /** At a flow [m³/s], [m]; zero where nothing is known. */
  at(flow: number): number;
}

/**
 * NPSH required at a flow, from the maker's points, his greatest lift, or both (the greater counts).
 *
 * Points: monotone cubic; before the first the first value, beyond the last growing with the square of flow; a value
 * below an earlier one is raised to it. Kept as at rated speed: at less speed a pump needs less, so this is on the
 * careful side. Greatest lift: NPSHr = (p0 − p_v)/(ρ g) − lift, at sea level in fresh water of 20 °C, so that lift
 * and suction losses together never pass what the maker states, less in thin air and warm water.
 *
 * @param data - points and greatest lift, as far as known
 * @returns NPSH required against flow, [m]
 * @range the maker's points; beyond them an extrapolation
 * @source interpolation: Fritsch and Butland 1984; the reading of the greatest lift is ours (DERIVED)
 */
export function npshRequiredBy(data: SuctionData): NpshRequired {
  const floor = data.greatestLift === undefined ? 0 : npshOfGreatestLift(data.greatestLift);
  return new NpshCurve(data.npshRequired ?? NO_POINTS, floor);
}

class NpshCurve implements NpshRequired {
  readonly #floor: number;
  readonly #first: PumpPoint | undefined;
  readonly #last: PumpPoint | undefined;
  readonly #curve: Curve | undefined;

  constructor(points: readonly PumpPoint[], floor: number) {
    this.#floor = floor;
    const risen = raised(points);
    this.#first = risen[0];
    this.#last = risen[risen.length - 1];
    if (risen.length > 1) this.#curve = monotoneCubic(risen.map(({ flow, head }) => ({ x: flow, y: head })));
  }

  at(flow: number): number {
    if (!this.#first || !this.#last) return this.#floor;
    return Math.max(this.#floor, this.#ofPoints(flow, this.#first, this.#last));
  }

  #ofPoints(flow: number, first: PumpPoint, last: PumpPoint): number {
    if (flow <= first.flow) return first.head;
    if (flow < last.flow && this.#curve) return this.#curve.value(flow);
    return last.flow > 0 ? last.head * (flow / last.flow) ** 2 : last.head;
  }
}

const NO_POINTS: readonly PumpPoint[] = [];

const RATING_WATER = { density: waterDensity(293.15, 0), vapourPressure: waterVapourPressure(293.15, 0) };
/** Lift at which fresh water of 20 °C would boil at sea level [m]. */
const BOILING_LIFT = npshAvailable(STANDARD_PRESSURE, RATING_WATER, 0, 0);

/** NPSH required that a stated greatest lift stands for [m]. */
function npshOfGreatestLift(lift: number): number {
  return Math.max(0, BOILING_LIFT - lift);
}

function raised(points: readonly PumpPoint[]): readonly PumpPoint[] {
  if (points.length === 0) return points;
  let greatest = 0;
  return points.map(({ flow, head }) => {
    greatest = Math.max(greatest, head);
    return { flow, head: greatest };
  });
}

/** Adds every fault in the suction data; `path` names it in messages. */
export function checkSuctionData(faults: Fault[], data: SuctionData, path = "pump"): void {
  const points = data.npshRequired ?? NO_POINTS;
  for (let i = 0; i < points.length; i += 1) {
    if (isSoundPoint(nth(points, i), points[i - 1])) continue;
    explainPoint(faults, nth(points, i), points[i - 1], `${path}.npshRequired[${i}]`);
  }
  if (data.greatestLift === undefined) return;
  checkLimit(faults, "HY-120", path, "greatestLift", data.greatestLift, HYDRAULIC_LIMITS.greatestLift, "m");
}
