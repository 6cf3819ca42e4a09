export { STANDARD_FORMULAE, type Formulae } from "./formulae.ts";
export {
  COLEBROOK,
  SWAMEE_JAIN,
  colebrookFriction,
  frictionOf,
  swameeJainFriction,
  type TurbulentFriction,
} from "./friction.ts";
export { HYDRAULIC_LIMITS } from "./limits.ts";
export { hoseLoss, prepareHose, type Hose, type HoseLine, type HoseLoss, type Resistance } from "./hose.ts";
export { FITTING_LOSSES, equivalentLengthLoss, narrowingLoss, wideningLoss, type FittingLoss } from "./fittings.ts";
export { curveAtSpeed, powerExponent, pumpCurve, type PumpCurve, type PumpPoint } from "./pump-curve.ts";
export { scaleDuty, shaftPower } from "./affinity.ts";
export { greatestSpeedRatio, powerCorrection } from "./engine.ts";
export { PRACTICE_LIFT, greatestPumpHeight, npshAvailable, npshRequiredBy, type SuctionData } from "./suction.ts";
export { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
export { findOperation, type OperatingPoint, type Operation } from "./operating-point.ts";
export { pumpingOf, pumpingOfPrepared, type Limit, type Pumping } from "./pumping.ts";
