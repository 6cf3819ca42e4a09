import { dayIn, type PlainDate } from "#base";
import type { Pattern } from "#kit";
import {
  firstToEnd,
  Lookups,
  standingOf,
  strengthOf,
  type KitState,
  type Lapse,
  type Place,
  type Standing,
  type StandingOptions,
  type Strength,
} from "#readiness";
import type { StationReading } from "./station-reading.ts";

/** A kit on the board. The pattern is absent where this copy of the station does not have it. */
export interface BoardKit {
  readonly kit: KitState;
  readonly pattern?: Pattern;
  readonly standing: Standing;
}

export interface BoardPlace {
  readonly place: Place;
  /** Calendar day there. */
  readonly day: PlainDate;
  readonly kits: readonly BoardKit[];
  readonly strength: Strength;
}

/** Which kits are good for what, place by place, and what ends first. */
export interface Board {
  readonly places: readonly BoardPlace[];
  readonly standings: ReadonlyMap<string, Standing>;
  readonly firstToEnd?: { readonly kit: KitState; readonly lapse: Lapse };
}

/**
 * The board of a station at an instant. Retired kits and closed places are left out.
 *
 * @param reading - the station as its log tells it
 * @param now - RFC 3339; the day is taken at each place by its own zone
 */
export function boardOf(reading: StationReading, now: string): Board {
  const open = reading.places.filter((place) => !place.closed);
  const byPlace = kitsByPlace(reading);
  const options = { otherPatternVersions: [...reading.patterns.values()], lookups: new Lookups() };
  const sighted = open.map((place) => {
    const day = dayIn(place.zone, now);
    return { place, day, kits: boardKits(reading, byPlace.get(place.id) ?? [], day, options) };
  });
  const standings = new Map(sighted.flatMap(({ kits }) => kits.map(({ kit, standing }) => [kit.id, standing])));
  const kits = sighted.flatMap((one) => one.kits.map(({ kit }) => kit));
  const first = firstToEnd(kits, standings);
  return {
    places: sighted.map((one) => ({
      ...one,
      strength: strengthOf(
        one.place,
        one.kits.map(({ kit }) => kit),
        standings,
      ),
    })),
    standings,
    ...(first === undefined ? {} : { firstToEnd: first }),
  };
}

function kitsByPlace({ kits }: StationReading): ReadonlyMap<string, readonly KitState[]> {
  const found = new Map<string, KitState[]>();
  for (const kit of kits) {
    if (kit.retired) continue;
    const here = found.get(kit.place);
    if (here) here.push(kit);
    else found.set(kit.place, [kit]);
  }
  return found;
}

function boardKits(
  reading: StationReading,
  here: readonly KitState[],
  day: PlainDate,
  options: StandingOptions,
): BoardKit[] {
  return here.map((kit) => {
    const pattern = reading.patterns.get(kit.pattern);
    return { kit, ...(pattern && { pattern }), standing: standingAt(kit, reading, day, options) };
  });
}

/** Standing of one kit on a day; grounded where its pattern is not to be had here. */
export function standingAt(
  kit: KitState,
  reading: Pick<StationReading, "patterns" | "policy">,
  day: PlainDate,
  options: StandingOptions = { otherPatternVersions: [...reading.patterns.values()] },
): Standing {
  const pattern = reading.patterns.get(kit.pattern);
  if (!pattern) return withoutPattern(kit);
  return standingOf(kit, pattern, day, reading.policy, options);
}

function withoutPattern(kit: KitState): Standing {
  const of = { pattern: kit.pattern };
  const restore = { what: [{ say: "connectDevice" }, { say: "putPattern", of }], minutes: 0 } as const;
  return { standing: "grounded", because: [{ rule: "pattern", said: { say: "noPattern", of } }], limits: [], restore };
}
