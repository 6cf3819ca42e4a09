import { formatQuantity, type UnitSystem } from "#base";

/** A length of a boat: "2.9 m", "9.5 ft". */
export function sayLength(si: number, units: UnitSystem): string {
  return formatQuantity(si, "length", { unit: units === "metric" ? "m" : "ft", digits: 2 });
}
