export { makeHull, type Hull, type HullForm, type HullSize, type Station } from "./hull-form.ts";
export {
  measureHydrostatics,
  riseWithWater,
  SEA_WATER,
  type Attitude,
  type Hydrostatics,
  type Place,
} from "./hydrostatics.ts";
export { makeBalance, type Balance, type Held, type Loading, type Resting } from "./equilibrium.ts";
export { PERMEABILITIES, type Compartment } from "./compartment.ts";
export { likelyGravityHeight, makeBody, type Body } from "./body.ts";
export {
  flowThrough,
  GREATEST_COEFFICIENT,
  headOver,
  LIKELY_COEFFICIENT,
  LINEAR_BELOW,
  signedRoot,
  strengthOf,
  type Opening,
} from "./opening.ts";
export { circularHoleRatio, printedCoefficient, unwinCoefficient, type OrificeShape } from "./discharge-coefficient.ts";
export {
  cargoPermeability,
  equalisationTime,
  freeSurfaceLoss,
  gmFromRollPeriod,
  joinedResistance,
  riseOfGravity,
} from "./stability.ts";
export type {
  Change,
  FixedVessel,
  FloatingVessel,
  PlacedOpening,
  PlacedPump,
  Prism,
  PumpDelivery,
  Vessel,
} from "./vessel.ts";
export { deliveryAt } from "./flows.ts";
export type {
  Accuracy,
  FloodCase,
  FloodEvent,
  FloodEventKind,
  FloodOutcome,
  FloodRun,
  FloodSample,
  Mark,
} from "./flood-case.ts";
export { simulateFlood } from "./simulation.ts";
export { levelAfter, type HeldSpace } from "./closed-form.ts";
export { spaceOf } from "./sounding-boat.ts";
export { uprightSpace, volumeAt, type SoundedSpace } from "./sounding-space.ts";
export {
  AREA_SHARE,
  casualtyAt,
  DELIVERY,
  flowAt,
  followLevel,
  HOLE,
  holeAreaOf,
  OUTSIDE,
  planSteps,
  START_LEVEL,
  STRENGTH,
  UNKNOWNS,
  type Casualty,
  type Pumped,
  type Reading,
  type SoundingPrior,
} from "./sounding-model.ts";
export { sampleBelief, type Belief } from "./sounding-sampler.ts";
export {
  NINETY,
  type Arrival,
  type Chances,
  type Forecast,
  type ForecastOptions,
  type Present,
  type Spread,
} from "./sounding-forecast.ts";
export { FLAGGED_BELOW, type Change as SoundingChange, type Misfit } from "./sounding-misfit.ts";
export { STALE_AFTER } from "./sounding-age.ts";
export { recentTrend, trendOf, type Interval, type Trend } from "./sounding-trend.ts";
export type { Action, ActionGains, ActionKind } from "./sounding-advice.ts";
export type { SoundingWarning, SoundingWarningKind } from "./sounding-warnings.ts";
export {
  believeCasualties,
  checkFit,
  likelyPrior,
  readSoundings,
  type QuantityName,
  type Sounding,
  type SoundingCase,
} from "./sounding.ts";
export { needKits, type CallForHelp, type KitsNeeded } from "./kits-needed.ts";
export {
  BOAT_SHAPES,
  likelyBeam,
  likelyCompartment,
  likelyHull,
  type BoatKind,
  type BoatShape,
  type LikelySpace,
} from "./boat-kinds.ts";
export { lieWithWater, type Lying } from "./lying.ts";
