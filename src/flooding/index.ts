export { makeHull, type Hull, type HullForm, type HullSize, type Station } from "./hull/hull-form.ts";
export {
  measureHydrostatics,
  riseWithWater,
  SEA_WATER,
  type Attitude,
  type Hydrostatics,
  type PointInBoat,
} from "./hull/hydrostatics.ts";
export { makeBalance, type Balance, type HeldHeel, type Loading, type Resting } from "./hull/equilibrium.ts";
export { PERMEABILITIES, type Compartment } from "./hull/compartment.ts";
export { halfBreadthAt } from "./hull/half-breadth.ts";
export { immersionOf, spaceVolumes } from "./hull/space-volumes.ts";
export { likelyGravityHeight, makeBody, type Body } from "./hull/body.ts";
export {
  flowThrough,
  GREATEST_COEFFICIENT,
  headOver,
  LIKELY_COEFFICIENT,
  LINEAR_BELOW,
  signedRoot,
  strengthOf,
  type Opening,
} from "./openings/opening.ts";
export {
  circularHoleRatio,
  printedCoefficient,
  unwinCoefficient,
  type OrificeShape,
} from "./openings/discharge-coefficient.ts";
export {
  cargoPermeability,
  equalisationTime,
  freeSurfaceLoss,
  gmFromRollPeriod,
  joinedResistance,
  riseOfGravity,
} from "./hull/stability.ts";
export type {
  Change,
  FixedVessel,
  FloatingVessel,
  PlacedOpening,
  PlacedPump,
  Prism,
  PumpDelivery,
  Vessel,
} from "./hull/vessel.ts";
export { deliveryAt } from "./openings/flows.ts";
export type {
  Accuracy,
  FloodCase,
  FloodEvent,
  FloodEventKind,
  FloodOutcome,
  FloodRun,
  FloodSample,
  LevelMark,
} from "./simulation/flood-case.ts";
export { simulateFlood } from "./simulation/simulation.ts";
export { levelAfter, type HeldSpace } from "./simulation/closed-form.ts";
export { spaceOf } from "./soundings/sounding-boat.ts";
export { uprightSpace, volumeAt, type SoundedSpace } from "./soundings/sounding-space.ts";
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
} from "./soundings/sounding-model.ts";
export { sampleBelief, type Posterior } from "./soundings/sounding-sampler.ts";
export {
  NINETY,
  type Arrival,
  type Chances,
  type Forecast,
  type ForecastOptions,
  type Present,
  type FiveQuantiles,
} from "./soundings/sounding-forecast.ts";
export { FLAGGED_BELOW, type SoundingChange, type Misfit } from "./soundings/sounding-misfit.ts";
export { STALE_AFTER } from "./soundings/sounding-age.ts";
export { recentTrend, trendOf, type TrendInterval, type LevelTrend } from "./soundings/sounding-trend.ts";
export type { Action, ActionGains, ActionKind } from "./soundings/sounding-advice.ts";
export type { SoundingWarning, SoundingWarningKind } from "./soundings/sounding-warnings.ts";
export { believeCasualties, checkFit, likelyPrior, readSoundings, type SoundingCase } from "./soundings/sounding.ts";
export type { QuantityName, Sounding } from "./answer/answer.ts";
export { needKits, type KitsNeeded } from "./launch/kits-needed.ts";
export { toldWater, type CallForHelp, type KitToTake } from "./launch/kits-needed-call.ts";
export { kitMoves } from "./launch/kits-needed-kits.ts";
export type { KitsChance, KitsPlan } from "./launch/kits-needed-plan.ts";
export {
  BOAT_SHAPES,
  likelyBeam,
  likelyCompartment,
  likelyHull,
  type BoatKind,
  type BoatShape,
  type LikelySpace,
} from "./hull/boat-kinds.ts";
export { rightingOf, type LeverPoint, type RightingCurve } from "./hull/righting.ts";
export { lieWithWater, type Lying } from "./hull/lying.ts";
export { readStick, type StickView, type Suspect } from "./stick/stick.ts";
export { lieAsSeen, type SeenOfHer } from "./hull/lying-as-seen.ts";
export { readSheet, type PumpBelief, type SheetReading } from "./sheet/sheet.ts";
export { believeSheet, type SheetPumpRun, type SheetBelief, type SheetCase, type SignSeen } from "./sheet/belief.ts";
export { pumpShareAt, runningShareAt, THOUGHT } from "./sheet/thought.ts";
