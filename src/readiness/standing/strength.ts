import { addDays, type PlainDate } from "#base";
import type { DayRange } from "./bands.ts";
import type { Band, KitState, Lapse, Place, Standing, StandingKind } from "../state.ts";

/** How many kits a place must hold ready, and holds. */
export interface Strength {
  readonly must: number;
  /** Ready, with limits or without. */
  readonly holds: number;
  /** Of these, with limits. */
  readonly withLimits: number;
  /** How many are wanting; 0 where there are enough. */
  readonly short: number;
}

/** Days on which a place will hold fewer ready kits than it must, if nobody does anything. */
export interface Shortfall extends DayRange {
  readonly holds: number;
  readonly must: number;
}

/** Strength of a place on the day the standings were taken. Retired kits and kits elsewhere do not count. */
export function strengthOf(
  place: Place,
  kits: readonly KitState[],
  standings: ReadonlyMap<string, Standing>,
): Strength {
  const kinds = kitsAt(place, kits).flatMap((kit) => standings.get(kit.id)?.standing ?? []);
  const holds = kinds.filter(isReady).length;
  const withLimits = kinds.filter((kind) => kind === "ready-with-limits").length;
  return { must: place.strength, holds, withLimits, short: Math.max(0, place.strength - holds) };
}

/** When strength will fall short, from the bands of the place's kits, over the days that the bands cover. */
export function shortfallsOf(
  place: Place,
  kits: readonly KitState[],
  bands: ReadonlyMap<string, readonly Band[]>,
  range: DayRange,
): readonly Shortfall[] {
  const own = kitsAt(place, kits).flatMap((kit) => bands.get(kit.id) ?? []);
  const starts = [...new Set([range.from, ...own.map((band) => band.from)])].filter((day) => inRange(day, range));
  const sorted = starts.toSorted();
  const pieces = sorted.map((from, index) => ({
    from,
    to: dayBefore(sorted[index + 1]) ?? range.to,
    holds: own.filter((band) => inRange(from, band) && isReady(band.standing)).length,
    must: place.strength,
  }));
  return pieces.filter((piece) => piece.holds < piece.must).reduce<readonly Shortfall[]>(joinShortfall, []);
}

/** The kit that is ready no longer first, and what ends it: a limit ends nothing. Undefined where nothing dated will. */
export function firstToEnd(
  kits: readonly KitState[],
  standings: ReadonlyMap<string, Standing>,
): { readonly kit: KitState; readonly lapse: Lapse } | undefined {
  const ends = kits.flatMap((kit) => {
    const lapse = kit.retired ? undefined : standings.get(kit.id)?.grounding;
    return lapse ? [{ kit, lapse }] : [];
  });
  return ends.toSorted((one, other) => (one.lapse.day < other.lapse.day ? -1 : 1))[0];
}

/** True for a standing that counts towards strength. */
export function isReady(standing: StandingKind): boolean {
  return standing === "ready" || standing === "ready-with-limits";
}

function kitsAt(place: Place, kits: readonly KitState[]): readonly KitState[] {
  return kits.filter((kit) => kit.place === place.id && !kit.retired);
}

function inRange(day: PlainDate, range: DayRange): boolean {
  return range.from <= day && day <= range.to;
}

function dayBefore(day: PlainDate | undefined): PlainDate | undefined {
  return day === undefined ? undefined : addDays(day, -1);
}

function joinShortfall(all: readonly Shortfall[], next: Shortfall): readonly Shortfall[] {
  const last = all.at(-1);
  if (!last || last.holds !== next.holds || addDays(last.to, 1) !== next.from) return [...all, next];
  return [...all.slice(0, -1), { ...last, to: next.to }];
}
