import type { CasualtyState } from "#readiness";

const MINUTE = 60_000;
/** A sounding tells of her for so long; after that it is history [ms]. */
const KNOWN_FOR = 30 * MINUTE;

/** How old what is known of a space is. */
export interface Freshness {
  /** When it was sounded last [ms]; undefined before the first. */
  readonly last?: number;
  /** Since then [ms]; 0 before the first. */
  readonly age: number;
  /** Too old to say how she is now. */
  readonly isStale: boolean;
}

/**
 * How old the last sounding of a space is.
 *
 * @param casualty - as its entries tell it; its soundings stand in the order in which they were read
 * @param space - id of the space
 * @param now - [ms]
 */
export function freshnessOf(casualty: Pick<CasualtyState, "soundings">, space: string, now: number): Freshness {
  const newest = lastSounding(casualty, space);
  if (!newest) return { age: 0, isStale: false };
  const last = Date.parse(newest.at);
  const age = Math.max(0, now - last);
  return { last, age, isStale: age > KNOWN_FOR };
}

/** The newest sounding of a space, by when it was read. */
export function lastSounding(
  { soundings }: Pick<CasualtyState, "soundings">,
  space: string,
): CasualtyState["soundings"][number] | undefined {
  return soundings.findLast((one) => one.space === space);
}

/** "47 min", "2 h 5 min": exact, since it is counted and not estimated. */
export function sayAge(ms: number): string {
  const minutes = Math.floor(ms / MINUTE);
  if (minutes < 120) return `${minutes}\u00a0min`;
  const rest = minutes % 60;
  return `${Math.floor(minutes / 60)}\u00a0h${rest === 0 ? "" : ` ${rest}\u00a0min`}`;
}
