/** What the readings of a measurement can tell of over the years, all volumes. `fuel-left` is drained from a tank that was full. */
export const TRENDS = ["fuel-burnt", "fuel-left", "water-found"] as const;
export type Trending = (typeof TRENDS)[number];
