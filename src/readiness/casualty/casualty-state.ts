import type {
  CasualtyBoat,
  CasualtyClosed,
  CasualtyHole,
  CasualtyJoined,
  CasualtyNoted,
  CasualtyReviewed,
  CasualtySituation,
  CasualtySpace,
  CasualtyTold,
  HolePatched,
  PumpSeen,
  PumpSetting,
  PumpStartTold,
  ReviewNoted,
  SoundingTaken,
  StabilitySeen,
  TowSet,
} from "../kinds/casualty-parts.ts";
import type { Mark } from "../state.ts";

/** A casualty as its entries tell it. */
export interface CasualtyState {
  readonly id: string;
  readonly name: string;
  readonly boat: CasualtyBoat;
  /** At least one, in the order they were told of. */
  readonly spaces: readonly CasualtySpace[];
  readonly hole?: CasualtyHole;
  readonly told?: CasualtyTold;
  readonly situation?: CasualtySituation;
  readonly opened: Mark;
  /** In the order in which they were read. */
  readonly soundings: readonly TakenSounding[];
  readonly pumps: readonly CasualtyPump[];
  /** In the order in which they were put. */
  readonly patches: readonly (Mark & Told<HolePatched>)[];
  /** What was seen of pumps, in the order in which it was seen; absent before the first. */
  readonly pumpSeen?: readonly (Mark & Told<PumpSeen>)[];
  /** What was told of starting and priming, in the order in which it was done; absent before the first. */
  readonly starts?: readonly (Mark & Told<PumpStartTold>)[];
  /** The last line about a tow. */
  readonly tow?: Mark & TowSet;
  /** The newest of each thing seen. */
  readonly stability: StabilitySeen;
  /** Fuel smelt and not yet found clear. */
  readonly fuelSmelt?: Mark;
  readonly notes: readonly (Mark & CasualtyNoted)[];
  readonly closed?: Mark & CasualtyClosed;
  /** What was added when the closed sheet was gone through; absent before the first. */
  readonly reviewNotes?: readonly (Mark & ReviewNoted)[];
  /** The last line that says it was gone through. */
  readonly reviewed?: Mark & CasualtyReviewed;
  /** Sheets said to be of this same casualty, by lines about this one. */
  readonly joins?: readonly (Mark & CasualtyJoined)[];
  /** Where more than one sheet was opened for her: each, the first opened first, which gives this one its id. */
  readonly sheets?: readonly JoinedSheet[];
}

/** One of several sheets of one casualty, as it stands by its own lines. */
export interface JoinedSheet {
  readonly id: string;
  readonly name: string;
  readonly opened: Mark;
  /** Where it was closed by a line of its own. */
  readonly closed?: Mark;
}

/** A sounding. Its `at` is when it was read; `written` is when it was written down, where that was later. */
export type TakenSounding = Mark & Told<SoundingTaken>;

/** What a line tells that may have been written down late: its mark's `at` is when it was seen or done. */
type Told<Body> = Omit<Body, "taken"> & {
  /** RFC 3339, where it was written down later. */
  readonly written?: string;
};

/** A pump with everything it did here. */
export interface CasualtyPump extends PumpSetting {
  readonly runs: readonly PumpRun[];
  /** When its tank was last known full: first started, or refuelled. */
  readonly filled?: string;
}

/** A stretch of pumping; without an end it still runs. Instants as RFC 3339. */
export interface PumpRun {
  readonly from: string;
  readonly to?: string;
  readonly space: string;
  readonly flow: number;
  readonly throttle?: number;
  readonly lift?: number;
}
