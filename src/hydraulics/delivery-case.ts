import { InputError, type Fault } from "#base";
import type { Water } from "#water";
import { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
import { checkHose, hoseLine, velocityHeadFactor, type Hose, type HoseLine } from "./hose.ts";
import { HYDRAULIC_LIMITS, checkLimit } from "./limits.ts";
import { checkCurve, curveAtSpeed, type PumpCurve, type PumpPoint } from "./pump-curve.ts";
import { checkSuctionData, npshAvailable, npshRequiredBy, type NpshRequired, type SuctionData } from "./suction.ts";

/** A pump rigged: what it is, where it stands, and the hoses on it. */
export interface DeliveryCase {
  readonly water: Water;
  /** On the water's surface [Pa]. */
  readonly airPressure: number;
  readonly pump: SuctionData & {
    /** At rated speed. */
    readonly curve: readonly PumpPoint[];
    readonly between?: "straight" | "smooth";
  };
  /** Running speed over rated speed [1]. */
  readonly speedRatio: number;
  /** Pump above the water it takes [m]; negative where it is below. */
  readonly lift: number;
  /** Absent on a pump that stands in the water: then no suction limit applies. */
  readonly suction?: Hose;
  /** End of the discharge hose above the pump [m]. */
  readonly rise: number;
  readonly discharge: Hose;
  /** Whether the jet's velocity head at the end of the discharge hose is lost. */
  readonly exitLoss: boolean;
  /** Pumps of the same kind, each with its own suction hose, on one discharge hose. */
  readonly pumps: number;
}

/** A case ready to be asked: every loss and limit against the flow of one pump. */
export interface PreparedCase {
  readonly curve: PumpCurve;
  readonly pumps: number;
  /** lift + rise [m] */
  readonly staticHead: number;
  /** Head lost in one pump's suction hose [m]. */
  suctionLoss(flow: number): number;
  /** Head lost in the discharge hose, exit among it, where every pump gives this flow [m]. */
  dischargeLoss(flow: number): number;
  /** Head the pump gives less the head the rig needs [m]; a root is an operating point. */
  excess(flow: number): number;
  /** [m] */
  npshRequired(flow: number): number;
  /** NPSH available at no flow [m]; suction losses come off it. */
  readonly surfaceHead: number;
  /** False for a pump that stands in the water. */
  readonly hasSuction: boolean;
}

/**
 * Checks a case and turns it into functions of flow.
 *
 * @param given - the rig
 * @param formulae - constants and friction law; default this program's
 * @returns functions of one pump's flow [m³/s] to head [m]
 * @range as the functions used
 * @source energy balance between the two water surfaces
 * @throws InputError HY-101 to HY-129 with every fault in the case
 */
export function prepareCase(given: DeliveryCase, formulae: Formulae = STANDARD_FORMULAE): PreparedCase {
  const faults: Fault[] = [];
  checkCase(faults, given);
  if (faults.length > 0) throw new InputError(faults);
  return new PreparedRig(given, formulae);
}

class PreparedRig implements PreparedCase {
  readonly curve: PumpCurve;
  readonly pumps: number;
  readonly staticHead: number;
  readonly surfaceHead: number;
  readonly hasSuction: boolean;
  readonly #suction: HoseLine | undefined;
  readonly #discharge: HoseLine;
  /** Velocity head lost at the end of the discharge hose at 1 m³/s [m]. */
  readonly #exit: number;
  readonly #npsh: NpshRequired;

  constructor(given: DeliveryCase, formulae: Formulae) {
    const { water, pump, suction, discharge } = given;
    this.curve = curveAtSpeed(pump.curve, given.speedRatio, pump.between);
    this.pumps = given.pumps;
    this.staticHead = given.lift + given.rise;
    this.surfaceHead = npshAvailable(given.airPressure, water, given.lift, 0, formulae.gravity);
    this.hasSuction = suction !== undefined;
    this.#suction = suction && hoseLine(suction, water, formulae);
    this.#discharge = hoseLine(discharge, water, formulae);
    this.#exit = given.exitLoss ? velocityHeadFactor(discharge.bore, formulae.gravity) : 0;
    this.#npsh = npshRequiredBy(pump);
  }

  suctionLoss(flow: number): number {
    return this.#suction ? this.#suction.loss(flow) : 0;
  }

  dischargeLoss(flow: number): number {
    const all = this.pumps * flow;
    return this.#discharge.loss(all) + this.#exit * all * all;
  }

  excess(flow: number): number {
    return this.curve.head(flow) - this.staticHead - this.suctionLoss(flow) - this.dischargeLoss(flow);
  }

  npshRequired(flow: number): number {
    return this.#npsh.at(flow);
  }
}

/** Adds every fault in a case, named as the `delivery` question names its fields. */
function checkCase(faults: Fault[], given: DeliveryCase): void {
  const limits = HYDRAULIC_LIMITS;
  checkCurve(faults, given.pump.curve);
  checkSuctionData(faults, given.pump);
  checkWater(faults, given.water);
  checkLimit(faults, "HY-121", "air", "pressure", given.airPressure, limits.airPressure, "Pa");
  checkLimit(faults, "HY-122", "", "throttle", given.speedRatio, limits.speedRatio, "");
  checkLimit(faults, "HY-123", "suction", "lift", given.lift, limits.lift, "m");
  if (given.suction) checkHose(faults, given.suction, "suction");
  checkLimit(faults, "HY-124", "discharge", "rise", given.rise, limits.rise, "m");
  checkHose(faults, given.discharge, "discharge");
  checkLimit(faults, "HY-125", "", "pumpsInParallel", given.pumps, limits.pumps, "pumps");
  if (!Number.isInteger(given.pumps)) faults.push(wholePumps(given.pumps));
}

function checkWater(faults: Fault[], water: Water): void {
  checkLimit(faults, "HY-127", "water", "density", water.density, { atLeast: 500, atMost: 2000 }, "kg/m³");
  checkLimit(faults, "HY-128", "water", "viscosity", water.viscosity, { above: 0, atMost: 10 }, "Pa·s");
  checkLimit(faults, "HY-129", "water", "vapourPressure", water.vapourPressure, { atMost: 1e6 }, "Pa");
}

function wholePumps(pumps: number): Fault {
  return {
    code: "HY-126",
    field: "pumpsInParallel",
    got: `${pumps}`,
    allowed: "a whole number",
    remedy: "Count pumps.",
  };
}
