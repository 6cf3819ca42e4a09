import { InputError, type Fault } from "#base";
import { STANDARD_GRAVITY, STANDARD_PRESSURE } from "#water";
import { prepareCase, type DeliveryCase } from "./delivery-case.ts";
import { velocityHeadFactor } from "./hose.ts";
import { checkLimit } from "./limits.ts";
import { READING_UNCERTAINTY } from "./proof-run.ts";
import { TAKEN_UNCERTAINTY } from "./uncertainty.ts";

/** On which side of the suction port a fault lies. */
export interface VacuumVerdict {
  readonly kind: "pump-side" | "hose-side" | "no-fault-seen" | "unclear";
  readonly because: string;
  /** Where to look, in order. */
  readonly lookFirst: readonly string[];
}

/** 25 ft of water: a sound pump holds this much vacuum on a closed suction port at sea level [Pa]. */
const SOUND_VACUUM = 25 * 0.3048 * 1000 * STANDARD_GRAVITY;

const PUMP_SIDE = [
  "check valve and flap",
  "impeller: clogged or broken",
  "casing, drain cock and filler gasket",
  "shaft seal",
  "wear clearance",
];
const HOSE_SIDE = [
  "strainer: clogged or out of the water",
  "suction couplings and their gaskets",
  "suction hose: kinked, liner loose or collapsed",
  "lift: is the water lower than thought?",
];

/**
 * The vacuum test: gauge on the suction port, casing full, discharge open, engine at speed. A pump that holds 25 ft of
 * vacuum is sound, and a fault lies in hose, strainer or lift; one that does not is itself at fault.
 *
 * @param vacuum - held, below air pressure, [Pa]
 * @param airPressure - [Pa]; the figure to hold is lowered with it
 * @param uncertainty - of the gauge, [Pa]
 * @returns on which side to look, and where first
 * @range pumps with a casing that seals; not pumps that stand in the water
 * @source Public Works magazine, "Storing pumps" (read in part); order of looking: TM 5-4320-200-13&P, table 4-2
 * @throws InputError HY-171 or HY-172
 */
export function vacuumTest(
  vacuum: number,
  airPressure: number = STANDARD_PRESSURE,
  uncertainty: number = READING_UNCERTAINTY.pressure,
): VacuumVerdict {
  const faults: Fault[] = [];
  checkLimit(faults, "HY-171", "", "vacuum", vacuum, { atLeast: 0, atMost: STANDARD_PRESSURE }, "Pa");
  checkLimit(faults, "HY-172", "", "airPressure", airPressure, { atLeast: 50_000, atMost: 110_000 }, "Pa");
  if (faults.length > 0) throw new InputError(faults);
  const wanted = SOUND_VACUUM * Math.min(1, airPressure / STANDARD_PRESSURE);
  const said = `${kPa(vacuum)} kPa held, ${kPa(wanted)} kPa wanted`;
  if (vacuum >= wanted) return { kind: "hose-side", because: `${said}: the pump is sound`, lookFirst: HOSE_SIDE };
  if (vacuum < wanted - 2 * uncertainty) return { kind: "pump-side", because: said, lookFirst: PUMP_SIDE };
  return {
    kind: "unclear",
    because: `${said}: too near to tell with this gauge`,
    lookFirst: [...PUMP_SIDE, ...HOSE_SIDE],
  };
}

/**
 * What the vacuum at the inlet of a running pump says: more than lift and losses account for is a blocked suction;
 * less, with too little flow, is air leaking in or a weak pump.
 *
 * @param given - the rig as it stands
 * @param flow - measured by other means, [m³/s]
 * @param vacuum - at the inlet, below air pressure, [Pa]
 * @param uncertainty - of the gauge, [Pa]
 * @returns on which side to look, and where first
 * @range one pump with a suction hose
 * @source energy balance of the suction hose (DERIVED)
 * @throws InputError with the case's faults
 */
export function runningVacuum(
  given: DeliveryCase,
  flow: number,
  vacuum: number,
  uncertainty: number = READING_UNCERTAINTY.pressure,
): VacuumVerdict {
  const rig = prepareCase(given);
  const unit = given.water.density * STANDARD_GRAVITY;
  const velocityHead = given.suction ? velocityHeadFactor(given.suction.bore, STANDARD_GRAVITY) * flow ** 2 : 0;
  const expected = unit * (given.lift + rig.suctionLoss(flow) + velocityHead);
  const allowed =
    2 *
    Math.hypot(uncertainty, unit * TAKEN_UNCERTAINTY.height, unit * TAKEN_UNCERTAINTY.losses * rig.suctionLoss(flow));
  const said = `${kPa(vacuum)} kPa read, ${kPa(expected)} kPa expected at this flow, give or take ${kPa(allowed)}`;
  if (vacuum > expected + allowed)
    return { kind: "hose-side", because: `${said}: the suction is blocked`, lookFirst: HOSE_SIDE };
  if (vacuum < expected - allowed)
    return {
      kind: "pump-side",
      because: `${said}: air leaks in, or the water is higher than thought`,
      lookFirst: ["suction couplings and their gaskets", ...PUMP_SIDE],
    };
  return { kind: "no-fault-seen", because: said, lookFirst: [] };
}

function kPa(pascal: number): string {
  return (pascal / 1000).toFixed(0);
}
