/** A stream of numbers that looks like chance and is the same for the same seed. */
export interface Chance {
  /** Uniform in [0, 1). */
  next(): number;
  /** Whole number from `from` to `to`, both included. */
  whole(from: number, to: number): number;
  /** One of these. */
  pick<T>(from: readonly T[]): T;
  /** Roughly normal about `mean`: sum of twelve uniforms, never further than six deviations. */
  about(mean: number, deviation: number): number;
}

/**
 * Seeded stream.
 *
 * @param seed - any whole number; the same seed gives the same stream
 * @returns the stream
 * @source Mulberry32 by T. Ettinger, public domain, FROM MEMORY; quality is ample for invented data
 */
export function createChance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    whole: (from, to) => from + Math.floor(next() * (to - from + 1)),
    pick: (from) => from[Math.floor(next() * from.length)]!,
    about: (mean, deviation) =>
      mean + deviation * (Array.from({ length: 12 }, next).reduce((sum, one) => sum + one, 0) - 6),
  };
}

/** A UUIDv7 (RFC 9562 section 5.7) for an invented instant, from the seeded stream. */
export function inventId(ms: number, chance: Chance): string {
  const time = ms.toString(16).padStart(12, "0");
  const hex = (digits: number): string =>
    Array.from({ length: digits }, () => chance.whole(0, 15).toString(16)).join("");
  const variant = chance.pick(["8", "9", "a", "b"]);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(3)}-${variant}${hex(3)}-${hex(12)}`;
}
