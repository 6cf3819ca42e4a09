export { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
export {
  COLEBROOK,
  SWAMEE_JAIN,
  FrictionFactor,
  colebrookFriction,
  swameeJainFriction,
  type TurbulentFriction,
} from "./friction.ts";
export { HYDRAULIC_LIMITS } from "./limits.ts";
export { hoseLoss, prepareHose, type Hose, type HoseLine, type HoseLoss, type Resistance } from "./hose.ts";
export {
  FIRE_HOSE_COEFFICIENTS,
  FITTING_LOSSES,
  equivalentLengthLoss,
  narrowingLoss,
  wideningLoss,
  type FittingLoss,
} from "./fittings.ts";
export { curveAtSpeed, powerExponent, pumpCurve, type PumpCurve, type PumpPoint } from "./pump-curve.ts";
export { scaleDuty, shaftPower } from "./affinity.ts";
export { greatestSpeedRatio, powerCorrection } from "./engine.ts";
export { PRACTICE_LIFT, greatestPumpHeight, npshAvailable, npshRequiredBy, type SuctionData } from "./suction.ts";
export { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
export { findOperation, type OperatingPoint, type Operation } from "./operating-point.ts";
export { pumpingOf, pumpingOfPrepared, type Limit, type Pumping } from "./pumping.ts";
export { deliveryAdvice, deliveryOf, type Assumption, type Delivery } from "./delivery.ts";
export {
  deliveryCurve,
  deliveryTable,
  type CurvePoint,
  type DeliveryPicture,
  type DeliveryRow,
} from "./delivery-table.ts";
export { type Advice, type ChangeKind } from "./advice.ts";
export { TAKEN_UNCERTAINTY, flowBand, type FlowBand } from "./uncertainty.ts";
export {
  greatestLift,
  pressureAfterStrokes,
  primingOf,
  strokesToPressure,
  type Priming,
  type PrimingCase,
} from "./priming.ts";
export { leakFromPrime, type PrimeLeak } from "./prime-leak.ts";
export {
  FUEL_LIMITS,
  DIESEL_DENSITY,
  PETROL_DENSITY,
  burnAtThrottle,
  burnOfPower,
  cansForPassage,
  fuelPlan,
  type BurnAtThrottle,
  type FuelCase,
  type FuelPlan,
} from "./fuel.ts";
export { READING_UNCERTAINTY, proofRun, type ProofLimits, type ProofReading, type ProofRun } from "./proof-run.ts";
export { runningVacuum, vacuumTest, type VacuumVerdict } from "./vacuum-test.ts";
export { meanOfFills, type TimedFills } from "./timed-fills.ts";
