// All the lies of one boat, from dry to lost: heel held, how she lies is a function of the water in her alone.
import type { Plane } from "./columns.ts";
import { lieDry, lieWith, type Boat, type Lie } from "./lying.ts";

export interface Lies {
  readonly boat: Boat;
  /** By rising amounts of water: the nth has `most`·(n/`steps`)³. */
  readonly rows: readonly Lie[];
  readonly most: number;
  readonly steps: number;
  /** Water at which she is lost: the lowest deck edge goes under, or nothing holds her up [m³]; else infinite. */
  readonly lostWith: number;
}

const STEPS = 90;

/**
 * Lies from dry until she is lost or the space is full.
 *
 * @param boat - to be followed
 * @param draught - about as she floats dry [m]
 * @param most - most water that the space holds [m³]
 * @returns undefined where she does not float dry
 */
export function liesOf(boat: Boat, draught: number, most: number): Lies | undefined {
  const dry = lieDry(boat, draught);
  if (dry === undefined || dry.freeboard <= 0) return undefined;
  const rows = [dry];
  for (let n = 1; n <= STEPS && rows.at(-1)!.freeboard > 0; n += 1) {
    const next = lieWith(boat, most * (n / STEPS) ** 3, rows.at(-1)!);
    if (next === undefined) return { boat, rows, most, steps: STEPS, lostWith: rows.at(-1)!.flood };
    rows.push(next);
  }
  return { boat, rows, most, steps: STEPS, lostWith: lossOf(rows) };
}

function lossOf(rows: readonly Lie[]): number {
  const [before, last] = [rows.at(-2)!, rows.at(-1)!];
  if (last.freeboard > 0) return Number.POSITIVE_INFINITY;
  const share = before.freeboard / (before.freeboard - last.freeboard);
  return before.flood + share * (last.flood - before.flood);
}

/** Where the surfaces lie. */
export interface Surfaces {
  readonly sea: Plane;
  readonly inside: Plane;
  readonly freeboard: number;
}

/** The lie with this much water, between the two nearest of the table. */
export function lieOf({ rows, most, steps }: Lies, flood: number): Surfaces {
  const place = steps * Math.cbrt(Math.max(0, flood) / most);
  const n = Math.max(0, Math.min(rows.length - 2, Math.floor(place)));
  const [low, high] = [rows[n]!, rows[n + 1]!];
  const share = Math.max(0, Math.min(1, place - n));
  const mix = (a: number, b: number): number => a + share * (b - a);
  const slope = mix(low.sea.slope, high.sea.slope);
  const across = low.sea.across;
  return {
    sea: { middle: mix(low.sea.middle, high.sea.middle), slope, across },
    inside: { middle: mix(low.inside.middle, high.inside.middle), slope, across },
    freeboard: mix(low.freeboard, high.freeboard),
  };
}

/** The water in her at which a quantity that rises with it comes to a value, by halving [m³]. */
export function floodWhere(lies: Lies, rises: (surfaces: Surfaces) => number): number {
  let [low, high] = [0, Math.min(lies.lostWith, lies.rows.at(-1)!.flood)];
  for (let n = 0; n < 60; n += 1) {
    const middle = (low + high) / 2;
    if (rises(lieOf(lies, middle)) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
