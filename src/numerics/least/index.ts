import { nth } from "#base";

/** Where a function is least, and its value there. */
export interface Least {
  readonly at: number;
  readonly value: number;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The least of a function over an interval: the best of a grid, then golden section between its neighbours.
 *
 * @param f - continuous
 * @param low - one end [unit of x]
 * @param high - the other end [unit of x]
 * @param grid - places looked at first; enough that the least lies between neighbours of the best of them
 * @returns where and how much; an end of the interval where the function falls towards it
 * @range x to about 1e-8 of its size, as flat as a least is; the value to rounding
 * @source Kiefer, Proc. Amer. Math. Soc. 4 (1953) 502-506 (FROM MEMORY)
 * @example leastOf((x) => (x - 2) ** 2, 0, 5, 20) // { at: 2.000, value: 0 }
 */
export function leastOf(f: (x: number) => number, low: number, high: number, grid: number): Least {
  const places = Array.from({ length: grid + 1 }, (_, i) => low + ((high - low) * i) / grid);
  const values = places.map(f);
  const best = values.indexOf(Math.min(...values));
  const inner = goldenSection(f, nth(places, Math.max(0, best - 1)), nth(places, Math.min(grid, best + 1)));
  return inner.value < nth(values, best) ? inner : { at: nth(places, best), value: nth(values, best) };
}

function goldenSection(f: (x: number) => number, from: number, to: number): Least {
  let [low, high] = [from, to];
  let inner = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)] as [number, number];
  let values = inner.map(f) as [number, number];
  for (let i = 0; i < 60; i += 1) {
    if (values[0] < values[1]) {
      high = inner[1];
      const next = high - GOLDEN * (high - low);
      inner = [next, inner[0]];
      values = [f(next), values[0]];
    } else {
      low = inner[0];
      const next = low + GOLDEN * (high - low);
      inner = [inner[1], next];
      values = [values[1], f(next)];
    }
  }
  return values[0] < values[1] ? { at: inner[0], value: values[0] } : { at: inner[1], value: values[1] };
}
