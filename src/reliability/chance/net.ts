import { nth } from "#base";
import { fromLogs } from "./belief.ts";

/** A rectangle of two figures that are integrated over. */
export interface Net {
  readonly across: readonly [number, number];
  readonly up: readonly [number, number];
}

/** A place of a net and how much of the belief lies there. */
export interface Placed {
  readonly at: readonly [across: number, up: number];
  readonly weight: number;
}

/** Pieces that carry less of the belief than this are dropped. */
const SLIGHT = 1e-5;
const COARSE = 24;
const FINE = 28;

/**
 * A belief about two figures over a net of places: a coarse one over all that may be, then a fine one over where it lies.
 *
 * @param logs - ln of the weight of a place, up to a constant
 * @param whole - all that may be
 * @returns places that carry more than 1 in 100 000 of it; weights add up to nearly 1
 */
export function focused(logs: (across: number, up: number) => number, whole: Net): readonly Placed[] {
  const narrow = boxOf(weighed(logs, whole, COARSE), whole, COARSE);
  return weighed(logs, narrow, FINE).filter(({ weight }) => weight > SLIGHT);
}

function weighed(logs: (across: number, up: number) => number, { across, up }: Net, count: number): readonly Placed[] {
  const places = steps(across, count).flatMap((x) => steps(up, count).map((y) => [x, y] as const));
  const weights = fromLogs(places.map(([x, y]) => logs(x, y)));
  return places.map((at, i) => ({ at, weight: nth(weights, i) }));
}

/** The part of a net that carries weight, and one step more. */
function boxOf(places: readonly Placed[], { across, up }: Net, count: number): Net {
  const kept = places.filter(({ weight }) => weight > SLIGHT * 0.01);
  const ends = (axis: 0 | 1, [low, high]: readonly [number, number]) => {
    const step = (high - low) / count;
    const all = kept.map(({ at }) => at[axis]);
    return [Math.max(low, Math.min(...all) - step), Math.min(high, Math.max(...all) + step)] as const;
  };
  return { across: ends(0, across), up: ends(1, up) };
}

function steps([low, high]: readonly [number, number], count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => low + ((i + 0.5) * (high - low)) / count);
}
