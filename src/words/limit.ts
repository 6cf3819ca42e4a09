import { formatQuantity, type Dimension, type UnitSystem } from "#base";

/**
 * A limit in the unit its pattern was written in, which is the one on the gauge, and in the reader's own where that is
 * another.
 *
 * @param si - value in SI
 * @param dimension - what it is
 * @param written - the unit of the pattern, and the reader's units
 * @example sayLimit(0.0008, "length", { unit: "mm", units: "us" }) // "0.800 mm (0.0315 in)"
 */
export function sayLimit(
  si: number,
  dimension: Dimension,
  { unit, units }: { readonly unit: string; readonly units: UnitSystem },
): string {
  const [written, own] = [formatQuantity(si, dimension, { unit }), formatQuantity(si, dimension, { system: units })];
  return written === own ? written : `${written} (${own})`;
}
