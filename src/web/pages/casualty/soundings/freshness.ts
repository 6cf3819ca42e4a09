import { STALE_AFTER } from "#flooding";
import type { CasualtyState } from "#readiness";

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
  return { last, age, isStale: age > 1000 * STALE_AFTER };
}

/** The newest sounding of a space, by when it was read. */
export function lastSounding(
  { soundings }: Pick<CasualtyState, "soundings">,
  space: string,
): CasualtyState["soundings"][number] | undefined {
  return soundings.findLast((one) => one.space === space);
}
