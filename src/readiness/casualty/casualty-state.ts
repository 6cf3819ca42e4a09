import type {
  CasualtyBodies,
  CasualtyBoat,
  CasualtyHole,
  CasualtySituation,
  CasualtySpace,
  CasualtyTold,
  PumpSetting,
} from "../kinds/casualty-kinds.ts";
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
  readonly patches: readonly (Mark & Told<"hole-patched">)[];
  /** What was seen of pumps, in the order in which it was seen; absent before the first. */
  readonly pumpSeen?: readonly (Mark & Told<"pump-seen">)[];
  /** What was told of starting and priming, in the order in which it was done; absent before the first. */
  readonly starts?: readonly (Mark & Told<"pump-start-told">)[];
  /** The last line about a tow. */
  readonly tow?: Mark & CasualtyBodies["tow-set"];
  /** The newest of each thing seen. */
  readonly stability: CasualtyBodies["stability-seen"];
  /** Fuel smelt and not yet found clear. */
  readonly fuelSmelt?: Mark;
  readonly notes: readonly (Mark & CasualtyBodies["casualty-noted"])[];
  readonly closed?: Mark & CasualtyBodies["casualty-closed"];
  /** What was added when the closed sheet was gone through; absent before the first. */
  readonly reviewNotes?: readonly (Mark & CasualtyBodies["review-noted"])[];
  /** The last line that says it was gone through. */
  readonly reviewed?: Mark & CasualtyBodies["casualty-reviewed"];
  /** Sheets said to be of this same casualty, by lines about this one. */
  readonly joins?: readonly (Mark & CasualtyBodies["casualty-joined"])[];
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
export type TakenSounding = Mark & Told<"sounding-taken">;

/** What a line tells that may have been written down late: its mark's `at` is when it was seen or done. */
type Told<Kind extends keyof CasualtyBodies> = Omit<CasualtyBodies[Kind], "taken"> & {
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
