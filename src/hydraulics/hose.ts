import { InputError, type Fault } from "#base";
import type { Water } from "#water";
import { HAZEN_WILLIAMS_EXPONENT, STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
import { FrictionFactor } from "./friction.ts";
import { HYDRAULIC_LIMITS, checkLimit } from "./limits.ts";

/** How the inside of a hose resists flow; each way has its own figure. */
export type Resistance =
  /** Darcy-Weisbach with an equivalent sand roughness [m]. */
  | { readonly kind: "roughness"; readonly roughness: number }
  /** Hazen-Williams C [1]. */
  | { readonly kind: "hazen-williams"; readonly coefficient: number }
  /** Fire service C: loss in psi for each 100 ft at 100 US gpm. */
  | { readonly kind: "fire-hose"; readonly coefficient: number };

/** A hose with the fittings in it. */
export interface Hose {
  /** Inner diameter [m]. */
  readonly bore: number;
  /** [m] */
  readonly length: number;
  readonly resistance: Resistance;
  /** Sum of the loss coefficients K of its fittings, on this bore [1]. */
  readonly fittings: number;
}

/** A hose ready to be asked for its loss at one flow after another. */
export interface HoseLine {
  /** Head lost at a flow [m³/s], friction and fittings, [m]. */
  loss(flow: number): number;
}

/** What a flow loses in a hose. */
export interface HoseLoss {
  /** [m] */
  readonly headLoss: number;
  /** [Pa] */
  readonly pressureLoss: number;
  /** [m/s] */
  readonly velocity: number;
  /** [1] */
  readonly reynolds: number;
  /** Darcy friction factor, where the roughness form was used and water moves [1]. */
  readonly frictionFactor?: number;
}

// psi for each 100 ft at 100 US gpm, in Pa·s²/m⁷: exact units of NIST SP 811 (2008), appendix B.
const PSI = 6894.757293168361;
const FIRE_HOSE_UNIT = PSI / (100 * 0.3048) / ((100 * 3.785411784e-3) / 60) ** 2;

/**
 * Prepares a hose for one water.
 *
 * Darcy-Weisbach h = f (L/D) v²/2g; Hazen-Williams h = 10.67 L Q^1.852/(C^1.852 D^4.8704);
 * fire service Δp[psi] = C (gpm/100)² (ft/100). Fittings h = K v²/2g.
 *
 * @param hose - bore, length, resistance, fittings
 * @param water - density [kg/m³] and viscosity [Pa·s]
 * @param formulae - constants and friction law; default this program's
 * @returns loss against flow, continuous and rising
 * @range flows of 0 and more
 * @source Colebrook 1939 and common practice: docs/methods/hose-loss.md; fire service coefficients as published by
 *   IFSTA for lined delivery hose, not for hard suction hose
 * @throws InputError HY-109 and HY-111 to HY-116 with every fault in the hose
 */
export function prepareHose(hose: Hose, water: Water, formulae: Formulae = STANDARD_FORMULAE): HoseLine {
  const faults: Fault[] = [];
  checkHose(faults, hose);
  if (faults.length > 0) throw new InputError(faults);
  return hoseLine(hose, water, formulae);
}

/** {@link prepareHose} for a hose already checked. */
export function hoseLine(hose: Hose, water: Water, formulae: Formulae): HoseLine {
  return new PreparedHose(hose, water, formulae);
}

/** One class for every resistance, so that the solver's inner loop always meets the same shape. */
class PreparedHose implements HoseLine {
  readonly #kind: Resistance["kind"];
  /** Head lost to fittings at 1 m³/s [m]. */
  readonly #fittings: number;
  /** Head lost to friction at 1 m³/s, for a friction factor of 1 where there is one [m]. */
  readonly #factor: number;
  /** Reynolds number at 1 m³/s [1]. */
  readonly #reynolds: number;
  readonly #friction: FrictionFactor | undefined;

  constructor(hose: Hose, water: Water, formulae: Formulae) {
    const { resistance, bore } = hose;
    this.#kind = resistance.kind;
    this.#fittings = hose.fittings * velocityHeadFactor(bore, formulae.gravity);
    this.#factor = frictionAtUnitFlow(hose, water, formulae);
    this.#reynolds = (4 * water.density) / (Math.PI * bore * water.viscosity);
    const rough = resistance.kind === "roughness";
    this.#friction = rough ? new FrictionFactor(resistance.roughness / bore, formulae.turbulent) : undefined;
  }

  loss(flow: number): number {
    if (!(flow > 0)) return 0;
    const fittings = this.#fittings * flow * flow;
    if (this.#friction) return fittings + this.#factor * this.#friction.at(this.#reynolds * flow) * flow * flow;
    if (this.#kind === "fire-hose") return fittings + this.#factor * flow * flow;
    return fittings + this.#factor * flow ** HAZEN_WILLIAMS_EXPONENT;
  }
}

function frictionAtUnitFlow(hose: Hose, water: Water, formulae: Formulae): number {
  const { resistance, bore, length } = hose;
  if (resistance.kind === "roughness") return (length / bore) * velocityHeadFactor(bore, formulae.gravity);
  if (resistance.kind === "fire-hose") {
    return (resistance.coefficient * FIRE_HOSE_UNIT * length) / (water.density * formulae.gravity);
  }
  const { coefficient, boreExponent } = formulae.hazenWilliams;
  return (coefficient * length) / (resistance.coefficient ** HAZEN_WILLIAMS_EXPONENT * bore ** boreExponent);
}

/**
 * Head, pressure and friction factor of a flow in a hose.
 *
 * @param hose - bore, length, resistance, fittings
 * @param flow - [m³/s], 0 or more
 * @param water - as {@link prepareHose}
 * @param formulae - default this program's
 * @returns losses, velocity, Reynolds number, friction factor
 * @range as {@link prepareHose}
 * @source as {@link prepareHose}
 * @throws InputError HY-110 flow out of range, or the hose's faults
 */
export function hoseLoss(hose: Hose, flow: number, water: Water, formulae: Formulae = STANDARD_FORMULAE): HoseLoss {
  const faults: Fault[] = [];
  checkLimit(faults, "HY-110", "", "flow", flow, HYDRAULIC_LIMITS.flow, "m³/s");
  checkHose(faults, hose);
  if (faults.length > 0) throw new InputError(faults);
  const headLoss = hoseLine(hose, water, formulae).loss(flow);
  const velocity = (4 * flow) / (Math.PI * hose.bore ** 2);
  const reynolds = (velocity * hose.bore * water.density) / water.viscosity;
  return {
    headLoss,
    pressureLoss: headLoss * water.density * formulae.gravity,
    velocity,
    reynolds,
    ...frictionFactorPart(hose, reynolds, formulae),
  };
}

const EIGHT_OVER_PI_SQUARED = 8 / Math.PI ** 2;

/** v²/2g for each (m³/s)², from the bore: 8/(g π² D⁴) [s²/m⁵]. */
export function velocityHeadFactor(bore: number, gravity: number): number {
  const square = bore * bore;
  return EIGHT_OVER_PI_SQUARED / (gravity * square * square);
}

/** Adds every fault in a hose; `path` names it in messages, such as "suction". */
export function checkHose(faults: Fault[], hose: Hose, path = ""): void {
  checkLimit(faults, "HY-111", path, "bore", hose.bore, HYDRAULIC_LIMITS.bore, "m");
  checkLimit(faults, "HY-112", path, "length", hose.length, HYDRAULIC_LIMITS.length, "m");
  checkLimit(faults, "HY-113", path, "fittings", hose.fittings, HYDRAULIC_LIMITS.fittings, "");
  checkResistance(faults, hose, path);
}

function checkResistance(faults: Fault[], { bore, resistance }: Hose, path: string): void {
  const { roughness, hazenWilliams, fireHoseCoefficient } = HYDRAULIC_LIMITS;
  if (resistance.kind === "roughness") {
    checkLimit(faults, "HY-114", path, "roughness", resistance.roughness, roughness, "m");
    const tenth = { atMost: bore / 10 };
    checkLimit(faults, "HY-109", path, "roughness", resistance.roughness, tenth, "m, a tenth of the bore");
  } else if (resistance.kind === "hazen-williams") {
    checkLimit(faults, "HY-115", path, "hazenWilliams", resistance.coefficient, hazenWilliams, "");
  } else checkLimit(faults, "HY-116", path, "fireHoseCoefficient", resistance.coefficient, fireHoseCoefficient, "");
}

function frictionFactorPart(hose: Hose, reynolds: number, formulae: Formulae): { readonly frictionFactor?: number } {
  if (hose.resistance.kind !== "roughness" || reynolds <= 0) return {};
  return { frictionFactor: new FrictionFactor(hose.resistance.roughness / hose.bore, formulae.turbulent).at(reynolds) };
}
