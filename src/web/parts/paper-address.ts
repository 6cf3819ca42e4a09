import type { UnitSystem } from "#base";

/**
 * The address of a paper in the reader's units.
 *
 * @example paperAddress("/api/paper/month.pdf?month=2027-03", "us") // "/api/paper/month.pdf?month=2027-03&units=us"
 */
export function paperAddress(href: string, units: UnitSystem): string {
  return `${href}${href.includes("?") ? "&" : "?"}units=${units}`;
}
