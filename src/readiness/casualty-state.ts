import type {
  CasualtyBodies,
  CasualtyBoat,
  CasualtyHole,
  CasualtySpace,
  CasualtyTold,
  PumpSetting,
} from "./casualty-kinds.ts";
import type { Mark } from "./state.ts";

/** A casualty as its entries tell it. */
export interface CasualtyState {
  readonly id: string;
  readonly name: string;
  readonly boat: CasualtyBoat;
  /** At least one, in the order they were told of. */
  readonly spaces: readonly CasualtySpace[];
  readonly hole?: CasualtyHole;
  readonly told?: CasualtyTold;
  readonly opened: Mark;
  /** In the order in which they were read. */
  readonly soundings: readonly TakenSounding[];
  readonly pumps: readonly CasualtyPump[];
  readonly patches: readonly (Mark & CasualtyBodies["hole-patched"])[];
  /** The newest of each thing seen. */
  readonly stability: CasualtyBodies["stability-seen"];
  /** Fuel smelt and not yet found clear. */
  readonly fuelSmelt?: Mark;
  readonly notes: readonly (Mark & CasualtyBodies["casualty-noted"])[];
  readonly closed?: Mark & CasualtyBodies["casualty-closed"];
}

/** A sounding. Its `at` is when it was read; `written` is when it was written down, where that was later. */
export type TakenSounding = Mark &
  Omit<CasualtyBodies["sounding-taken"], "taken"> & {
    /** RFC 3339 */
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
}
