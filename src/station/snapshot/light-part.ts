import type { StockPart } from "#readiness";

/** Of what grows with the years, so many of the newest are kept. */
const NEWEST = { lines: 60, orders: 20, recalls: 20 } as const;

/**
 * A part as light as an early board needs it: what it is, and the newest of its lines. How many are on a shelf is only
 * known once every line is at hand.
 */
export function lightPart(part: StockPart): StockPart {
  return {
    ...part,
    lines: part.lines.slice(-NEWEST.lines),
    orders: part.orders.slice(-NEWEST.orders),
    recalls: part.recalls.slice(-NEWEST.recalls),
  };
}
