import { InputError, printGiven, type Fault } from "./errors.ts";
import { findUnit, readQuantityText, unitRemedy } from "./quantity-text.ts";
import { unitsOf, type Dimension, type Unit } from "./units.ts";

export type { Dimension } from "./units.ts";

/** How a person reads quantities. What they type may carry any known unit. */
export type UnitSystem = "metric" | "us";

/** A quantity as scripts and people give it: text with a unit, or a bare SI number. */
export type QuantityInput = string | number;

/**
 * Reads a quantity into SI.
 *
 * @param given - text with a unit as people say it, such as "8 ft", "2 ft 6 in", "3½ in", "1 h 30 min", "250 L/min",
 *   "4,5 m" or "5 cm in 2 min"; or a bare number already in SI
 * @param dimension - what it must be
 * @param field - name of the field, for the message
 * @returns the value in SI [m, m², m³, m³/s, Pa, kg, K, s, m/s, rad, W, V, g/kg, kg/J or 1]
 * @throws InputError BA-101 not a quantity, BA-102 unit missing or not of this dimension, BA-103 not finite, BA-104
 *   parts that do not fit one another, BA-105 a comma that may mean two things, BA-106 a time of day for a length of time
 * @example parseQuantity("8 ft", "length", "lift") // 2.4384
 */
export function parseQuantity(given: QuantityInput, dimension: Dimension, field = "value"): number {
  if (typeof given === "number") return requireFinite(given, dimension, field);
  const read = readQuantityText(given, dimension);
  if (!("si" in read)) throw fault(read.code, given, dimension, field, read.remedy);
  return requireFinite(read.si, dimension, field);
}

/** True where the text is one that `parseQuantity` reads: a finite amount with a known unit of this dimension. */
export function isQuantity(given: string, dimension: Dimension): boolean {
  const read = readQuantityText(given, dimension);
  return "si" in read && Number.isFinite(read.si);
}

/**
 * Writes an SI value in a named unit, or in the unit the person's system uses for its size.
 *
 * @param si - value in SI
 * @param dimension - what it is
 * @param options - `unit`: a unit's own symbol; `system`: "metric" (default) or "us"; `digits`: at least so
 *   many significant ones, default 3; the part before the point is written in full
 * @returns text such as "8.0 ft", with a no-break space before the unit
 * @example formatQuantity(0.25 / 60, "flow") // "250 L/min"
 */
export function formatQuantity(
  si: number,
  dimension: Dimension,
  options: Written & { readonly digits?: number } = {},
): string {
  const unit = unitFor(si, dimension, options);
  return withSymbol(formatNumber(shownIn(unit, si), options.digits ?? 3), unit);
}

/** How a quantity is to be written: in a unit by its own symbol, or as the person's system has it. */
export interface Written {
  readonly unit?: string;
  readonly system?: UnitSystem;
}

/**
 * Writes an estimate: two significant figures and no more, before the point too, since it is known no better.
 *
 * @param si - value in SI
 * @example formatEstimate(0.473 / 60, "flow") // "470 L/min"
 */
export function formatEstimate(si: number, dimension: Dimension, options: Written = {}): string {
  const unit = unitFor(si, dimension, options);
  return withSymbol(twoFigures(si, unit), unit);
}

/**
 * Writes an estimate with its doubt, in one unit: the middle, and what it lies between nine times in ten.
 *
 * @param spread - 5th, 50th and 95th percentile in SI
 * @example formatSpread({ p05: 0.013 / 60, p50: 0.162 / 60, p95: 1.881 / 60 }, "flow") // "160 L/min (13 to 1900)"
 */
export function formatSpread(
  spread: { readonly p05: number; readonly p50: number; readonly p95: number },
  dimension: Dimension,
  options: Written = {},
): string {
  const unit = unitFor(spread.p50, dimension, options);
  const [low, middle, high] = [spread.p05, spread.p50, spread.p95].map((si) => twoFigures(si, unit));
  return `${withSymbol(middle!, unit)} (${low} to ${high})`;
}

function twoFigures(si: number, unit: Unit): string {
  return formatNumber(Number(shownIn(unit, si).toPrecision(2)), 2);
}

/** A number with at least so many significant digits, its whole part in full, never in exponent form, never "-0". */
export function formatNumber(value: number, digits = 3): string {
  if (value === 0) return "0";
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.min(12, Math.max(0, digits - 1 - magnitude));
  const rounded = value.toFixed(decimals);
  return Number(rounded) === 0 ? "0" : rounded;
}

/** The value as a bare number in the given unit. */
export function inUnit(si: number, unitSymbol: string, dimension: Dimension): number {
  const unit = requireUnit(unitSymbol, dimension);
  return (si - (unit.offset ?? 0)) / unit.factor;
}

/** The unit a person of this system would read a value of this size in. */
export function preferredUnit(si: number, dimension: Dimension, system: UnitSystem): Unit {
  const candidates = unitsOf(dimension).filter((unit) => unit.shownIn?.includes(system));
  const fitting = candidates.filter((unit) => Math.abs(si) >= (unit.shownFrom ?? 0));
  return fitting[fitting.length - 1] ?? candidates[0] ?? unitsOf(dimension)[0]!;
}

function unitFor(si: number, dimension: Dimension, { unit, system = "metric" }: Written): Unit {
  return unit === undefined ? preferredUnit(si, dimension, system) : requireUnit(unit, dimension);
}

function shownIn(unit: Unit, si: number): number {
  return (si - (unit.offset ?? 0)) / unit.factor;
}

function withSymbol(figures: string, { symbol }: Unit): string {
  return symbol === "" ? figures : `${figures}\u00a0${symbol}`;
}

function requireUnit(symbol: string, dimension: Dimension): Unit {
  const unit = findUnit(symbol, dimension);
  if (!unit) throw fault("BA-102", symbol, dimension, "unit", unitRemedy("1", symbol, dimension));
  return unit;
}

function requireFinite(value: number, dimension: Dimension, field: string): number {
  if (Number.isFinite(value)) return value;
  throw fault("BA-103", value, dimension, field, "Give a finite number.");
}

function fault(code: string, got: unknown, dimension: Dimension, field: string, remedy: string): InputError {
  const symbols = unitsOf(dimension).map((unit) => unit.symbol || "a bare number");
  const one: Fault = { code, field, got: printGiven(got), allowed: `a ${dimension} in ${symbols.join(", ")}`, remedy };
  return new InputError([one]);
}
