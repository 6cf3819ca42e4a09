// Chance by seed: the same number gives the same casualty, on every machine.

/** Draws of one casualty, one after the other. */
export interface Chance {
  /** Even between two values. */
  readonly between: (from: number, to: number) => number;
  /** Even in the logarithm. */
  readonly between10: (from: number, to: number) => number;
  /** Standard normal, cut off at three. */
  readonly normal: () => number;
  /** A whole number, both ends in. */
  readonly whole: (from: number, to: number) => number;
  readonly pick: <T>(all: readonly T[]) => T;
  /** True so often. */
  readonly happens: (share: number) => boolean;
}

/**
 * A stream of chance.
 *
 * @param seed - any whole number
 * @source mulberry32 (T. Ettinger, public domain), FROM MEMORY; normals by Box and Muller, Annals of Mathematical
 *   Statistics 29 (1958) 610
 */
export function chanceOf(seed: number): Chance {
  const even = mulberry(seed);
  const between = (from: number, to: number): number => from + (to - from) * even();
  return {
    between,
    between10: (from, to) => from * (to / from) ** even(),
    normal: () => cutNormal(even),
    whole: (from, to) => Math.min(to, Math.floor(between(from, to + 1))),
    pick: (all) => all[Math.floor(all.length * even())]!,
    happens: (share) => even() < share,
  };
}

function mulberry(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function cutNormal(even: () => number): number {
  for (;;) {
    const drawn = Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
    if (Math.abs(drawn) <= 3) return drawn;
  }
}
