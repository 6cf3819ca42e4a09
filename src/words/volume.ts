import { formatNumber, inUnit, type UnitSystem } from "#base";

/** What a volume is read in: petrol burnt in a run, or the little water found in a case. */
export type VolumeStyle = "fuel" | "drops";

const UNITS: Readonly<Record<VolumeStyle, Readonly<Record<UnitSystem, string>>>> = {
  fuel: { metric: "L", us: "US qt" },
  drops: { metric: "mL", us: "US fl oz" },
};

/**
 * A volume in one unit for all sizes, so that readings can be held against each other.
 *
 * @param si - [m³]
 * @param style - what it is a volume of
 * @param digits - at least so many significant ones
 * @example sayVolume(0.0009, "fuel", "us") // "0.951 US qt"
 */
export function sayVolume(si: number, style: VolumeStyle, units: UnitSystem, digits = 3): string {
  const unit = UNITS[style][units];
  return `${formatNumber(volumeIn(si, style, units), digits)}\u00a0${unit}`;
}

/**
 * The same as a bare number, for an axis that names its unit.
 *
 * @param si - [m³]
 * @example volumeIn(0.0009, "fuel", "us") // 0.951
 */
export function volumeIn(si: number, style: VolumeStyle, units: UnitSystem): number {
  return inUnit(si, UNITS[style][units], "volume");
}
