import { formatQuantity } from "#base";
import { adviceFor, type Advice } from "./advice.ts";
import { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
import { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
import { pumpingOfPrepared, type Pumping } from "./pumping.ts";
import { BAND_ASSUMPTION, flowBand, type FlowBand } from "./uncertainty.ts";

/** Something taken for granted, and how much that matters. */
export interface Assumption {
  readonly what: string;
  readonly effect: string;
}

/** What a rigged pump delivers, how sure that is, and what was taken for granted. */
export interface Delivery extends Pumping {
  readonly band: FlowBand;
  readonly assumptions: readonly Assumption[];
}

/** NPSH required [m] tried where the maker states nothing, to say how much it matters. */
const TRIED_NPSH = 3;

/**
 * What a rigged pump delivers, with its uncertainty and every assumption.
 *
 * @param given - the rig
 * @param formulae - constants and friction law; default this program's
 * @returns flow, heads, what binds, band, assumptions
 * @range steady flow, hoses full, clean strainer
 * @source docs/methods/pump.md
 * @throws InputError with every fault in the case
 * @example
 * const hose = { bore: 0.051, length: 10, resistance: { kind: "roughness", roughness: 5e-5 }, fittings: 0 };
 * const pump = { curve: [{ flow: 0, head: 24 }, { flow: 0.012, head: 8 }] };
 * const rig = { water: waterAt(288.15, 0), airPressure: 101_325, pump, speedRatio: 1, lift: 0, rise: 2, discharge: hose,
 *   exitLoss: true, pumps: 1 };
 * deliveryOf(rig).kind // "delivers"
 */
export function deliveryOf(given: DeliveryCase, formulae: Formulae = STANDARD_FORMULAE): Delivery {
  const rig = prepareCase(given, formulae);
  const found = pumpingOfPrepared(rig);
  return {
    kind: found.kind,
    limit: found.limit,
    flow: found.flow,
    flowPerPump: found.flowPerPump,
    head: found.head,
    suctionLoss: found.suctionLoss,
    dischargeLoss: found.dischargeLoss,
    npshAvailable: found.npshAvailable,
    npshRequired: found.npshRequired,
    residual: found.residual,
    iterations: found.iterations,
    because: found.because,
    points: found.points,
    band: flowBand(rig, found),
    assumptions: assumptionsOf(given, rig, found),
  };
}

/**
 * What to change about a rig, the change that gains most first; see {@link adviceFor}.
 *
 * @param given - the rig
 * @param formulae - constants and friction law; default this program's
 * @returns changes with their gain in flow [m³/s]; empty where none gains anything
 * @source DERIVED: each change is solved anew as `deliveryOf` solves it
 * @throws InputError with every fault in the case
 */
export function deliveryAdvice(given: DeliveryCase, formulae: Formulae = STANDARD_FORMULAE): readonly Advice[] {
  return adviceFor(given, pumpingOfPrepared(prepareCase(given, formulae)), formulae);
}

function assumptionsOf(given: DeliveryCase, rig: PreparedCase, found: Pumping): readonly Assumption[] {
  const assumptions: Assumption[] = [BAND];
  if (rig.hasSuction) assumptions.push(...suctionAssumptions(given, rig, found));
  if (found.kind !== "cannot-lift") assumptions.push(...curveAssumptions(rig, found.flowPerPump));
  return assumptions;
}

const BAND: Assumption = { what: BAND_ASSUMPTION, effect: "They make the band; a worn pump may lie below it." };

function suctionAssumptions(given: DeliveryCase, rig: PreparedCase, found: Pumping): readonly Assumption[] {
  if (given.pump.npshRequired?.length) return [];
  if (given.pump.greatestLift !== undefined) return [FROM_GREATEST_LIFT];
  const margin = rig.surfaceHead - found.suctionLoss - TRIED_NPSH;
  return [margin >= 0 ? UNKNOWN_SUCTION_ENOUGH : unknownSuctionBinds(-margin)];
}

function unknownSuctionBinds(missing: number): Assumption {
  const effect = `With ${TRIED} required the suction would bind: ${bothWays(missing)} is missing at this flow.`;
  return { what: UNKNOWN_SUCTION, effect };
}

/** A height for whoever reads it, whichever units they use. */
function bothWays(metres: number): string {
  const say = (unit: string) => formatQuantity(metres, "length", { unit, digits: 2 });
  return `${say("m")} (${say("ft")})`;
}

const UNKNOWN_SUCTION = "Nothing is known of the pump's suction: only boiling of the water was checked.";
/** Written once: writing quantities takes longer than working the delivery out. */
const TRIED = bothWays(TRIED_NPSH);
const UNKNOWN_SUCTION_ENOUGH: Assumption = {
  what: UNKNOWN_SUCTION,
  effect: `With ${TRIED} required the answer would be the same.`,
};

const FROM_GREATEST_LIFT: Assumption = {
  what: "No NPSH curve: the stated greatest lift is taken as the most that lift and suction losses may come to, at sea level and 20 °C (68 °F).",
  effect: "Near that lift the flow is careful rather than exact.",
};

function curveAssumptions({ curve }: PreparedCase, flow: number): readonly Assumption[] {
  if (flow > curve.lastFlow) return [BEYOND_CURVE];
  return flow < curve.firstFlow ? [BEFORE_CURVE] : NONE;
}

const NONE: readonly Assumption[] = [];
const BEYOND_CURVE: Assumption = {
  what: "The flow lies beyond the pump's last point; its curve was drawn on.",
  effect: "The pump may give less than said; the last point is what it is known to do.",
};
const BEFORE_CURVE: Assumption = {
  what: "The flow lies before the pump's first point; its curve was drawn back to no flow.",
  effect: "The head there is a guess, and with it the flow.",
};
