import { type Fault, firstOf, InputError, lastOf } from "#base";
import { monotoneCubic } from "#numerics";
import { checkLimit } from "./limits.ts";

/**
 * Density of petrol [kg/m³] where none is given; petrol lies between 720 and 780.
 *
 * @source US DOE Alternative Fuels Data Center, fuel properties: 116 090 Btu/gal over 18 676 Btu/lb, and SG 0.72 to 0.78
 */
export const PETROL_DENSITY = 745;

/**
 * Density of diesel [kg/m³] where none is given: the middle of what is sold as such, 820 to 845 at 15 °C.
 *
 * @source EN 590, density at 15 °C 820 to 845 kg/m³, flash point above 55 °C, as quoted on suppliers' specification
 *   pages (ncheurope.com, "Diesel requirements EU"); the standard itself was not in hand
 */
export const DIESEL_DENSITY = 832;

/** What an engine carries and burns. */
export interface FuelCase {
  /** Fuel in the tank [m³]. */
  readonly tank: number;
  /** Fuel in cans beside it [m³]. */
  readonly cans: number;
  /** [m³/s] */
  readonly burn: number;
  /** Fuel to have left in the tank when refuelling [m³]. */
  readonly reserve: number;
}

/** How long the fuel lasts [s]. */
export interface FuelPlan {
  /** From a full tank to empty. */
  readonly runtime: number;
  /** When to stop and refuel, with the reserve left. */
  readonly refuelAt: number;
  /** Tank and cans together. */
  readonly total: number;
}

/** What this room accepts of fuel. */
export const FUEL_LIMITS = {
  tank: { above: 0, atMost: 0.5 },
  cans: { atLeast: 0, atMost: 0.5 },
  burn: { above: 0, atMost: 1e-3 },
  shaftPower: { above: 0, atMost: 1e6 },
  bsfc: { atLeast: 4e-8, atMost: 5e-7 },
  density: { atLeast: 650, atMost: 900 },
  passage: { atLeast: 0, atMost: 30 * 86_400 },
} as const;

/**
 * How long tank and cans last.
 *
 * t = V/q; refuel at (V − V_reserve)/q
 *
 * @param given - volumes [m³] and burn [m³/s]
 * @returns times, [s]
 * @range steady running; a cold or heeling engine may stop earlier, so the last of a tank is not counted on
 * @source definition
 * @throws InputError HY-151 to HY-154 with every fault
 * @example fuelPlan({ tank: 0.0036, cans: 0, burn: 1e-6, reserve: 0.0006 }).refuelAt // 3000
 */
export function fuelPlan(given: FuelCase): FuelPlan {
  const faults: Fault[] = [];
  checkLimit(faults, "HY-151", "", "tank", given.tank, FUEL_LIMITS.tank, "m³");
  checkLimit(faults, "HY-152", "", "cans", given.cans, FUEL_LIMITS.cans, "m³");
  checkLimit(faults, "HY-153", "", "burn", given.burn, FUEL_LIMITS.burn, "m³/s");
  checkLimit(faults, "HY-154", "", "reserve", given.reserve, { atLeast: 0, atMost: given.tank }, "m³, the tank");
  if (faults.length > 0) throw new InputError(faults);
  const { tank, cans, burn, reserve } = given;
  return { runtime: tank / burn, refuelAt: (tank - reserve) / burn, total: (tank + cans) / burn };
}

/**
 * Volume burnt in a second at a shaft power, q = P·bsfc/ρ.
 *
 * @param shaftPower - [W]
 * @param bsfc - brake specific fuel consumption, [kg/J]; small carburettor engines 350 to 500 g/kWh, small diesels 230 to
 *   290 g/kWh (both FROM MEMORY)
 * @param density - of the fuel, [kg/m³]
 * @returns burn, [m³/s]
 * @range steady running
 * @source definition
 * @example burnOfPower(2500, 400e-3 / 3.6e6) // ≈ 3.73e-7
 */
export function burnOfPower(shaftPower: number, bsfc: number, density: number = PETROL_DENSITY): number {
  return (shaftPower * bsfc) / density;
}

/** Burn at a throttle setting, and whether the pattern's figures reached that far. */
export interface BurnAtThrottle {
  /** [m³/s] */
  readonly burn: number;
  readonly kind: "between-points" | "nearest-point";
}

/**
 * Burn at a throttle setting, from a few measured ones.
 *
 * Monotone cubic between the points; beyond them the nearest point's burn, and below the first that is more than the
 * truth, so that the refuel clock rings early rather than late.
 *
 * @param points - throttle (speed ratio) and burn [m³/s], at least one, in any order
 * @param throttle - speed ratio, [1]
 * @returns burn, [m³/s]
 * @range the points; above the last the burn is more than said
 * @source interpolation: Fritsch and Butland 1984
 */
export function burnAtThrottle(
  points: readonly { readonly throttle: number; readonly burn: number }[],
  throttle: number,
): BurnAtThrottle {
  const table = points.map((point) => ({ x: point.throttle, y: point.burn })).sort((one, other) => one.x - other.x);
  const [first, last] = [firstOf(table), lastOf(table)];
  const held = Math.min(Math.max(throttle, first.x), last.x);
  const burn = monotoneCubic(table).value(held);
  return { burn, kind: held === throttle ? "between-points" : "nearest-point" };
}

/**
 * Cans to take along for a passage, n = ⌈(q·t + V_reserve − V_tank)/V_can⌉.
 *
 * @param plan - tank, burn, reserve
 * @param passage - running time, [s]
 * @param can - volume of one can, [m³]
 * @returns whole cans, [1], and the fuel the passage burns, [m³]
 * @range steady running
 * @source definition
 */
export function cansForPassage(
  plan: FuelCase,
  passage: number,
  can: number,
): { readonly cans: number; readonly fuel: number } {
  const fuel = plan.burn * passage;
  return { cans: Math.max(0, Math.ceil((fuel + plan.reserve - plan.tank) / can - 1e-9)), fuel };
}
