import { firstOf } from "#base";
import { STANDARD_GRAVITY } from "#water";

/**
 * Loss of metacentric height to slack tanks or water that can run from side to side.
 *
 * GG_v = n·ρ·l·b³/(12·Δ)
 *
 * @param surface - `length` and `breadth` of the free surface [m], `count` alike, `density` of the liquid [kg/m³]
 * @param displacement - mass of the boat, liquid included [kg]
 * @returns loss [m]
 * @source Barrass & Derrett, Ship Stability for Masters and Mates, ch. 20
 * @example freeSurfaceLoss({ length: 15, breadth: 10, density: 1025 }, 8e6) // 0.16015625
 */
export function freeSurfaceLoss(
  surface: { readonly length: number; readonly breadth: number; readonly density: number; readonly count?: number },
  displacement: number,
): number {
  const inertia = (surface.length * surface.breadth ** 3) / 12;
  return ((surface.count ?? 1) * surface.density * inertia) / displacement;
}

/**
 * Rise of the centre of gravity when a weight low in the boat is taken out.
 *
 * GG₁ = w·(KG − kg)/(W − w)
 *
 * @param boat - `mass` [kg] and `kg` [m] before
 * @param taken - `mass` [kg] and `kg` [m] of what is taken out
 * @returns rise, negative where high weight goes [m]
 * @source Barrass & Derrett, Ship Stability for Masters and Mates, ch. 20 example 1
 * @example riseOfGravity({ mass: 8153750, kg: 7.5 }, { mass: 153750, kg: 1.5 }) // 0.1153125
 */
export function riseOfGravity(
  boat: { readonly mass: number; readonly kg: number },
  taken: { readonly mass: number; readonly kg: number },
): number {
  return (taken.mass * (boat.kg - taken.kg)) / (boat.mass - taken.mass);
}

/**
 * Metacentric height from a roll period, where nobody knows KG.
 *
 * GM = (2·C·B/T)², C = 0.373 + 0.023·(B/d) − 0.043·(L/100)
 *
 * @param roll - `period` of a full roll out and back [s], `beam`, `draught`, `length` on the waterline [m]
 * @returns GM with its band from the spread of the coefficient, ±10 % [m]
 * @range boats rolling freely, not driven by the swell; water aboard free to run shortens what is left
 * @source IMO 2008 Intact Stability Code, part A 2.3 (coefficient) and part B annex (small craft) (FROM MEMORY)
 * @example gmFromRollPeriod({ period: 4, beam: 3, draught: 1, length: 10 }).gm // 0.431
 */
export function gmFromRollPeriod(roll: {
  readonly period: number;
  readonly beam: number;
  readonly draught: number;
  readonly length: number;
}): { readonly gm: number; readonly atLeast: number; readonly atMost: number } {
  const c = 0.373 + 0.023 * (roll.beam / roll.draught) - 0.043 * (roll.length / 100);
  const gm = ((2 * c * roll.beam) / roll.period) ** 2;
  return { gm, atLeast: gm * 0.81, atMost: gm * 1.21 };
}

/**
 * Time for water to cross from one space to another until its head has fallen to a rest.
 *
 * T = 2W/(S·F)·(1 − √(h_f/H₀))/√(2 g H₀)/(1 − h_f/H₀), F = 1/√Σk, at most 1
 *
 * @param duct - volume to cross `water` [m³], cross-section `area` [m²], `resistance` Σk [1], head at first `head` and
 *   at last `finalHead` [m]
 * @returns time [s]
 * @range head linear in the volume crossed
 * @source DERIVED; form of IMO MSC.362(92) (FROM MEMORY)
 * @example equalisationTime({ water: 8, area: 0.03, resistance: 1.8, head: 0.9, finalHead: 0 }) // 170.3
 */
export function equalisationTime(duct: {
  readonly water: number;
  readonly area: number;
  readonly resistance: number;
  readonly head: number;
  readonly finalHead: number;
}): number {
  const passing = Math.min(1, 1 / Math.sqrt(duct.resistance));
  const left = duct.finalHead / duct.head;
  const speed = Math.sqrt(2 * STANDARD_GRAVITY * duct.head);
  return ((2 * duct.water) / (duct.area * passing) / speed) * ((1 - Math.sqrt(left)) / (1 - left));
}

/**
 * Resistances of ducts one after another, reduced to the first one's cross-section: k₁ + k₂·S₁²/S₂² + …
 *
 * @param ducts - `resistance` k [1] and `area` [m²] of each, in order
 * @returns Σk for the first area [1]
 * @source IMO MSC.245(83), annex, 2.5
 * @example joinedResistance([{ resistance: 0.5, area: 0.05 }, { resistance: 1.2, area: 0.08 }]) // 0.96875
 */
export function joinedResistance(ducts: readonly { readonly resistance: number; readonly area: number }[]): number {
  const first = firstOf(ducts).area;
  return ducts.reduce((sum, duct) => sum + (duct.resistance * first ** 2) / duct.area ** 2, 0);
}

/**
 * Permeability of a hold of cargo: what its stowage leaves empty.
 *
 * μ = (SF − 1/RD)/SF, SF in m³/t
 *
 * @param stowage - room a tonne takes up [m³/t]
 * @param relativeDensity - of the cargo itself [1]
 * @returns permeability [1]
 * @source Barrass & Derrett, Ship Stability for Masters and Mates, ch. 22 (method)
 * @example cargoPermeability(1.5, 0.8) // 0.16667
 */
export function cargoPermeability(stowage: number, relativeDensity: number): number {
  return (stowage - 1 / relativeDensity) / stowage;
}
