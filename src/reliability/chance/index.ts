export type { Belief } from "./belief.ts";
export { clopperPearson, jeffreys, wilson, type Interval } from "./share-intervals.ts";
export { foundByCheck, type FoundByCheck, type Looks } from "./found-by-check.ts";
export type { Demands, Exposure, FleetFit } from "./fleet.ts";
export { enoughTogether, type Member } from "./common-cause.ts";
export { workingAt, type AgedCase } from "./aged.ts";
export { type Spread } from "./spread.ts";
export { hiddenRates, type HiddenRate } from "./hidden-rate.ts";
export {
  fleetOfStarts,
  startsByFleet,
  loneStarts,
  openingsToTell,
  startingOf,
  TOO_WIDE,
  type ChancePrior,
  type FleetMember,
  type StartBelief,
  type StartRecord,
} from "./starting.ts";
export type { Pooling } from "./fleet-net.ts";
export { looksToSay, neverFound, type NeverFound } from "./never-found.ts";
export { rateOf, type RateBelief, type RatePooling, type RatePrior } from "./rate.ts";
export { worthTelling } from "./one-more.ts";
