import { InputError, printGiven, type Fault } from "#base";
import { findRoot } from "#numerics";
import { STANDARD_GRAVITY } from "#water";
import { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
import { velocityHeadFactor } from "./hose.ts";
import { checkLimit } from "./limits.ts";
import { pumpingOfPrepared } from "./pumping.ts";
import { TAKEN_UNCERTAINTY } from "./uncertainty.ts";

/** What was read on a proof run; standard uncertainties may be given, else common ones are taken. */
export type ProofReading =
  /** A drum of known volume [m³] filled in so many seconds. */
  | {
      readonly method: "timed-fill";
      readonly volume: number;
      readonly seconds: number;
      readonly volumeUncertainty?: number;
      readonly secondsUncertainty?: number;
    }
  /** Gauge pressure at the pump's outlet [Pa]. */
  | { readonly method: "discharge-pressure"; readonly pressure: number; readonly pressureUncertainty?: number }
  /** Vacuum at the pump's inlet below air pressure [Pa]. */
  | { readonly method: "suction-vacuum"; readonly vacuum: number; readonly vacuumUncertainty?: number }
  | { readonly method: "flow-meter"; readonly flow: number; readonly flowUncertainty?: number };

/** Standard uncertainties taken where none is given: common practice for a station's own gear. */
export const READING_UNCERTAINTY = {
  /** Of a drum's volume, relative [1]. */
  volume: 0.02,
  /** Of a hand-stopped time [s]. */
  seconds: 0.5,
  /** Of a dial gauge [Pa]. */
  pressure: 5000,
  /** Of a portable flow meter, relative [1]. */
  flowMeter: 0.03,
} as const;

/** Measured over expected flow below which a kit is grounded, and noted. */
export interface ProofLimits {
  readonly grounds: number;
  readonly notes: number;
}

/** A proof run as a measurement. */
export interface ProofRun {
  /** Measured flow of the pump [m³/s], with its standard uncertainty. */
  readonly flow: number;
  readonly flowUncertainty: number;
  /** Flow the pattern's figures give for this lift and these hoses [m³/s]. */
  readonly expected: number;
  readonly ratio: number;
  readonly ratioUncertainty: number;
  readonly verdict: "as-expected" | "noted" | "grounds" | "unclear";
  readonly because: string;
}

/**
 * Turns a proof run's reading into a flow, compares it with what is expected and judges it.
 *
 * u(Q)² = Σ (∂Q/∂x_i · u(x_i))². Judged on Q/Q_expected ± 2u: wholly below the first limit grounds; across it
 * unclear; wholly above 1.15 unclear too, more than the curve can give; else below the second noted; else as expected.
 *
 * @param given - the rig as it stood, at the throttle it ran
 * @param reading - what was read
 * @param limits - of the pattern
 * @returns flow with its uncertainty, expected flow, ratio and verdict
 * @range one pump; gauge methods use the hose as a meter, and say unclear where it loses too little head to be one
 * @source JCGM 100:2008 (GUM), 5.1.2; the decision rule is ours (DERIVED)
 * @throws InputError HY-161 to HY-167 with every fault in reading and limits, or the case's
 * @example
 * const hose = { bore: 0.051, length: 10, resistance: { kind: "roughness", roughness: 5e-5 }, fittings: 0 };
 * const pump = { curve: [{ flow: 0, head: 24 }, { flow: 0.012, head: 8 }] };
 * const rig = { water: waterAt(288.15, 0), airPressure: 101_325, pump, speedRatio: 1, lift: 0, rise: 2, discharge: hose,
 *   exitLoss: true, pumps: 1 };
 * proofRun(rig, { method: "timed-fill", volume: 0.2, seconds: 90 }, { grounds: 0.7, notes: 0.85 }).verdict // "grounds"
 */
export function proofRun(given: DeliveryCase, reading: ProofReading, limits: ProofLimits): ProofRun {
  checkReading(reading, limits);
  const rig = prepareCase(given);
  const expected = pumpingOfPrepared(rig).flow;
  const measured = flowFrom(given, rig, reading);
  if (expected <= 0) return nothingExpected(measured);
  const ratio = measured.flow / expected;
  const ratioUncertainty = measured.uncertainty / expected;
  const { verdict, because } = judge(ratio, ratioUncertainty, limits);
  return {
    flow: measured.flow,
    flowUncertainty: measured.uncertainty,
    expected,
    ratio,
    ratioUncertainty,
    verdict,
    because,
  };
}

/** A pump gives at most this share of what its curve says [1]: beyond it the measurement is doubted, not the pump praised. Judgement. */
const MOST = 1.15;

interface Measured {
  readonly flow: number;
  readonly uncertainty: number;
}

function nothingExpected({ flow, uncertainty }: Measured): ProofRun {
  const because = "by the pattern's figures this rig lifts no water: check lift and hoses";
  return {
    flow,
    flowUncertainty: uncertainty,
    expected: 0,
    ratio: 0,
    ratioUncertainty: 0,
    verdict: "unclear",
    because,
  };
}

function judge(ratio: number, uncertainty: number, limits: ProofLimits): Pick<ProofRun, "verdict" | "because"> {
  const [low, high] = [ratio - 2 * uncertainty, ratio + 2 * uncertainty];
  const shown = `${percent(ratio)} of what is expected, give or take ${percent(2 * uncertainty)}`;
  if (high < limits.grounds) return { verdict: "grounds", because: `${shown}: below ${percent(limits.grounds)}` };
  if (low < limits.grounds) {
    return {
      verdict: "unclear",
      because: `${shown}: too rough to tell from ${percent(limits.grounds)}; measure again`,
    };
  }
  if (low > MOST) {
    const remedy = "check lift, rise, hoses, measure and watch, and measure again";
    return { verdict: "unclear", because: `${shown}: more than this pump can give here; ${remedy}` };
  }
  if (ratio < limits.notes) return { verdict: "noted", because: `${shown}: below ${percent(limits.notes)}` };
  return { verdict: "as-expected", because: shown };
}

function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}

function flowFrom(given: DeliveryCase, rig: PreparedCase, reading: ProofReading): Measured {
  switch (reading.method) {
    case "timed-fill":
      return flowOfFill(reading);
    case "flow-meter": {
      const { flow, flowUncertainty = READING_UNCERTAINTY.flowMeter * flow } = reading;
      return { flow, uncertainty: flowUncertainty };
    }
    case "discharge-pressure":
      return flowOfDischarge(given, rig, reading.pressure, reading.pressureUncertainty ?? READING_UNCERTAINTY.pressure);
    case "suction-vacuum":
      return flowOfSuction(given, rig, reading.vacuum, reading.vacuumUncertainty ?? READING_UNCERTAINTY.pressure);
  }
}

/** Q = V/t, u(Q)² = (u(V)/t)² + (V·u(t)/t²)². */
function flowOfFill(reading: Extract<ProofReading, { method: "timed-fill" }>): Measured {
  const { volume, seconds } = reading;
  const uVolume = reading.volumeUncertainty ?? READING_UNCERTAINTY.volume * volume;
  const uSeconds = reading.secondsUncertainty ?? READING_UNCERTAINTY.seconds;
  const uncertainty = Math.hypot(uVolume / seconds, (volume * uSeconds) / seconds ** 2);
  return { flow: volume / seconds, uncertainty };
}

/** p/(ρ g) = rise + losses to the outlet; the gauge reads static pressure, so one velocity head comes off. */
function flowOfDischarge(given: DeliveryCase, rig: PreparedCase, pressure: number, uncertainty: number): Measured {
  const velocityHead = velocityHeadFactor(given.discharge.bore, STANDARD_GRAVITY);
  const needed = (flow: number): number => rig.dischargeLoss(flow) - velocityHead * flow * flow;
  return flowByHose(given, needed, pressure, uncertainty, given.rise);
}

/** vacuum/(ρ g) = lift + losses in the suction hose + one velocity head. */
function flowOfSuction(given: DeliveryCase, rig: PreparedCase, vacuum: number, uncertainty: number): Measured {
  const velocityHead = given.suction ? velocityHeadFactor(given.suction.bore, STANDARD_GRAVITY) : 0;
  const needed = (flow: number): number => rig.suctionLoss(flow) + velocityHead * flow * flow;
  return flowByHose(given, needed, vacuum, uncertainty, given.lift);
}

/** The flow at which a hose loses the head a gauge shows; the hose is the meter, known as well as its losses are. */
function flowByHose(
  given: DeliveryCase,
  loss: (flow: number) => number,
  pressure: number,
  pressureUncertainty: number,
  height: number,
): Measured {
  const unit = given.water.density * STANDARD_GRAVITY;
  const head = pressure / unit - height;
  const most = greatestMetered(loss, head);
  const root = head > 0 ? findRoot((flow) => loss(flow) - head, 0, most) : undefined;
  const flow = root?.kind === "found" ? root.root : 0;
  const uHead = Math.hypot(pressureUncertainty / unit, TAKEN_UNCERTAINTY.height, TAKEN_UNCERTAINTY.losses * loss(flow));
  return { flow, uncertainty: flowSpread(loss, flow, head, uHead) };
}

/** Half the flow between head less and head more by its uncertainty: holds also where the loss is nearly flat. */
function flowSpread(loss: (flow: number) => number, flow: number, head: number, uHead: number): number {
  const above = Math.max(0, head) + uHead;
  const root = findRoot((q) => loss(q) - above, flow, greatestMetered(loss, above));
  return root.kind === "found" ? Math.max(root.root - flow, 0) : flow;
}

/** A flow at which a hose loses at least this head, or the greatest any hose here carries. */
function greatestMetered(loss: (flow: number) => number, head: number): number {
  let flow = 1e-3;
  while (loss(flow) < head && flow < 10) flow *= 2;
  return flow;
}

function checkReading(reading: ProofReading, limits: ProofLimits): void {
  const faults: Fault[] = [];
  checkLimit(faults, "HY-161", "limits", "grounds", limits.grounds, { atLeast: 0, atMost: 1 }, "");
  checkLimit(faults, "HY-162", "limits", "notes", limits.notes, { atLeast: limits.grounds, atMost: 1 }, "");
  if (reading.method === "timed-fill") {
    checkLimit(faults, "HY-163", "", "volume", reading.volume, { above: 0, atMost: 10 }, "m³");
    checkLimit(faults, "HY-164", "", "seconds", reading.seconds, { above: 0, atMost: 3600 }, "s");
  }
  if (reading.method === "flow-meter")
    checkLimit(faults, "HY-165", "", "flow", reading.flow, { atLeast: 0, atMost: 1 }, "m³/s");
  if (reading.method === "discharge-pressure")
    checkLimit(faults, "HY-166", "", "pressure", reading.pressure, { atLeast: 0, atMost: 5e6 }, "Pa");
  if (reading.method === "suction-vacuum")
    checkLimit(faults, "HY-167", "", "vacuum", reading.vacuum, { atLeast: 0, atMost: 101_325 }, "Pa");
  faults.push(...uncertaintyFaults(reading));
  if (faults.length > 0) throw new InputError(faults);
}

function uncertaintyFaults(reading: ProofReading): Fault[] {
  return Object.entries(reading)
    .filter(
      ([field, value]) =>
        field.endsWith("Uncertainty") && !(typeof value === "number" && value >= 0 && value < Infinity),
    )
    .map(([field, value]) => ({
      code: "HY-168",
      field,
      got: printGiven(value),
      allowed: "0 or more",
      remedy: "Give one standard uncertainty.",
    }));
}
