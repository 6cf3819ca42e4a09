/**
 * Wall-clock arithmetic for waits and runs. Nothing here counts ticks: every figure is the difference between
 * a stored instant and the clock now, so a locked phone, a reload or a dead battery changes nothing.
 */

/** A running wait or run seen at one instant. */
export interface Elapsed {
  /** Whole seconds since the start, never negative. */
  readonly seconds: number;
  /** Whole seconds until the limit, 0 once reached. */
  readonly left: number;
  readonly reached: boolean;
  /** Whole seconds past the limit, 0 before. */
  readonly over: number;
}

/**
 * How far a timer has come.
 *
 * @param started - RFC 3339 instant of the start
 * @param now - milliseconds since 1970-01-01 UTC
 * @param limit - [s], ≥ 0
 * @returns whole seconds [s]; a clock set back reads as just started
 */
export function readTimer(started: string, now: number, limit: number): Elapsed {
  const ran = Math.max(0, (now - Date.parse(started)) / 1000);
  const seconds = Math.floor(ran);
  const reached = ran >= limit;
  return { seconds, left: reached ? 0 : Math.ceil(limit - ran), reached, over: reached ? Math.floor(ran - limit) : 0 };
}
