import { formatNumber, formatQuantity, formatSpread, inUnit, type UnitSystem } from "#base";

/** `estimate`: two figures, since none is known better. `measured`: every litre there is. */
export type FlowStyle = "estimate" | "measured";

/** Unit that flows are read in: one for all sizes, so that two flows can be held against each other. */
export function flowUnit(units: UnitSystem): string {
  return units === "us" ? "US gpm" : "L/min";
}

/**
 * A flow in the reader's units.
 *
 * @param si - [m³/s]
 * @param units - of the reader
 * @param style - how well it is known
 * @example sayFlow(0.473 / 60, "metric") // "470 L/min"
 */
export function sayFlow(si: number, units: UnitSystem, style: FlowStyle = "estimate"): string {
  if (style === "measured") return formatQuantity(si, "flow", { unit: flowUnit(units), digits: 2 });
  return `${flowFigure(si, units)}\u00a0${flowUnit(units)}`;
}

/**
 * An estimate without its unit, for a range: two figures.
 *
 * @param round - which way; the ends of a range go outward
 * @example flowFigure(0.473 / 60, "metric", Math.ceil) // "480"
 */
export function flowFigure(si: number, units: UnitSystem, round: (value: number) => number = Math.round): string {
  const value = inUnit(si, flowUnit(units), "flow");
  if (value === 0) return "0";
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
  // A figure that is round already stays where it is, whatever division leaves behind it.
  const steps = Number((value / step).toPrecision(9));
  return formatNumber(round(steps) * step, 2);
}

/** An estimate with its doubt: "160 L/min (13 to 1900)", what it is and what it lies between nine times in ten. */
export function sayFlowSpread(spread: Parameters<typeof formatSpread>[0], units: UnitSystem): string {
  return formatSpread(spread, "flow", { unit: flowUnit(units) });
}
