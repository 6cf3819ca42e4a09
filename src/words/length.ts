import { inUnit, preferredUnit, type UnitSystem } from "#base";

/** `height`: a lift, a rise or a hose, two figures in the unit of its size. `hull`: a measure of a boat, to a tenth. */
export type LengthStyle = "height" | "hull";

/** Lengths of people's world in feet or metres. */
const LONG: Readonly<Record<UnitSystem, string>> = { metric: "m", us: "ft" };

/**
 * A length in the reader's units.
 *
 * @param si - [m]
 * @param units - of the reader
 * @param style - what it is a length of
 * @example sayLength(9, "us", "hull") // "29.5 ft"
 */
export function sayLength(si: number, units: UnitSystem, style: LengthStyle = "height"): string {
  const isNone = Math.abs(si) < 1e-9;
  const unit = style === "hull" || isNone ? LONG[units] : preferredUnit(si, "length", units).symbol;
  const value = inUnit(si, unit, "length");
  const figure = style === "height" ? value.toPrecision(2) : value.toFixed(Math.abs(value) < 1 ? 2 : 1);
  return `${Number(figure)}\u00a0${unit}`;
}

/** A unit, and what a value comes to in it. */
export interface LevelUnit {
  readonly symbol: string;
  readonly of: (si: number) => number;
}

/** Levels are in centimetres or inches: whole figures, whatever the size. */
export function levelUnit(units: UnitSystem): LevelUnit {
  const symbol = units === "metric" ? "cm" : "in";
  return { symbol, of: (si) => inUnit(si, symbol, "length") };
}

/** A level as people on deck say it: "54 cm", "21 in". */
export function sayLevel(si: number, units: UnitSystem): string {
  const unit = levelUnit(units);
  return `${Math.round(unit.of(si))}\u00a0${unit.symbol}`;
}

/** A level that is estimated: whole, and to two figures, "54 cm", "110 cm". */
export function sayLevelAbout(si: number, units: UnitSystem): string {
  return `${aboutLevel(si, units)}\u00a0${levelUnit(units).symbol}`;
}

/** The same without its unit. */
export function aboutLevel(si: number, units: UnitSystem): number {
  return Number(Math.round(levelUnit(units).of(si)).toPrecision(2));
}
