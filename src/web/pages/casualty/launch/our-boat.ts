import type { RescueBoat } from "#readiness";
import type { StationView } from "#web/device/index.ts";

/** How kits get to her: a boat of the station as she is set, or what was told for this call. */
export interface Way {
  /** Id of the boat; undefined where it is none of the station's. */
  readonly boat: RescueBoat | undefined;
  /** Place whose kits go with her. */
  readonly place: string;
  /** [m/s] */
  readonly speed: number;
  /** Until she is under way, and from alongside to water [s]. */
  readonly launch: number;
  readonly setUp: number;
  readonly carries: number;
  readonly mains: boolean;
  /** Figures that nobody has set: they stand in until somebody does. */
  readonly isGuessed: boolean;
}

/** What was told for this call of the boat that goes; see `Call`. */
interface BoatTold {
  readonly boat?: string | undefined;
  readonly speed?: number | undefined;
  readonly launch?: number | undefined;
  readonly setUp?: number | undefined;
  readonly carries?: number | undefined;
}

/** What a boat nobody has set is taken for, and said to be taken for. */
const GUESS = { speed: (20 * 1852) / 3600, launch: 600, setUp: 600, carries: 2, mains: false };
/** Id of a boat that is none of the station's. */
export const ANOTHER = "another";

/** What of a call changes with the boat: what was told of the one before is not her figure. */
export function boatPicked(boat: string): BoatTold {
  return { boat, speed: undefined, launch: undefined, setUp: undefined, carries: undefined };
}

/**
 * The boat counted on: the one picked, else the one that lies where the person works, else the station's first. What was
 * told for this call stands before her own figures.
 */
export function wayOf({ boats, place }: Pick<StationView, "boats" | "place">, call: BoatTold): Way {
  const own = boats.find((boat) => boat.place === place.id) ?? boats[0];
  const boat = call.boat === ANOTHER ? undefined : (boats.find(({ id }) => id === call.boat) ?? own);
  const usual = boat ?? { ...GUESS, place: place.id };
  const told = [call.speed, call.launch, call.setUp, call.carries];
  return {
    boat,
    place: usual.place,
    speed: call.speed ?? usual.speed,
    launch: call.launch ?? usual.launch,
    setUp: call.setUp ?? usual.setUp,
    carries: call.carries ?? usual.carries,
    mains: usual.mains,
    isGuessed: boat === undefined && told.some((one) => one === undefined),
  };
}
