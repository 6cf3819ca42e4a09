import { findUnit, formatQuantity, preferredUnit, type Dimension, type UnitSystem } from "#base";

/** Metric units that stand in sentences, and what each measures; the longest first. */
const METRIC: readonly (readonly [symbol: string, dimension: Dimension])[] = [
  ["L/min", "flow"],
  ["m³/s", "flow"],
  ["m³/h", "flow"],
  ["L/h", "flow"],
  ["kg/m³", "density"],
  ["m/s", "speed"],
  ["km/h", "speed"],
  ["kPa", "pressure"],
  ["bar", "pressure"],
  ["Pa", "pressure"],
  ["m²", "area"],
  ["m³", "volume"],
  ["mL", "volume"],
  ["L", "volume"],
  ["mm", "length"],
  ["cm", "length"],
  ["m", "length"],
  ["kg", "mass"],
  ["°C", "temperature"],
];
const DIMENSIONS = new Map(METRIC);
const FIGURE = "-?\\d+(?:\\.\\d+)?";
const SAID = new RegExp(
  `(?<![\\d.,/])(${FIGURE})(?: to (${FIGURE}))?[ \\u00a0](${METRIC.map(([symbol]) => symbol).join("|")})(?![\\w²³/·])(?! (?:spanner|key|socket|bolt|screw|clip)s?\\b)`,
  "g",
);

/**
 * A sentence with the reader's own units beside each figure in others; what was written stays as it was.
 *
 * @param text - as a pattern, an assumption or an answer says it, in metric units
 * @param units - the reader's
 * @returns for a metric reader the text itself
 * @example sayProse("Full, within 20 mm of the ring.", "us") // "Full, within 20 mm (0.79 in) of the ring."
 */
export function sayProse(text: string, units: UnitSystem): string {
  if (units === "metric") return text;
  return text.replaceAll(SAID, (said, first: string, second: string | undefined, symbol: string) => {
    const figures = second === undefined ? [first] : [first, second];
    return `${said} (${inTheirs(figures, symbol, units)})`;
  });
}

/** One figure or a range, both ends in the unit of the second. */
function inTheirs(figures: readonly string[], symbol: string, units: UnitSystem): string {
  const dimension = DIMENSIONS.get(symbol)!;
  const { factor, offset = 0 } = findUnit(symbol, dimension)!;
  const values = figures.map((figure) => Number(figure) * factor + offset);
  const unit = preferredUnit(values.at(-1)!, dimension, units).symbol;
  const said = values.map((si, i) => formatQuantity(si, dimension, { unit, digits: digitsOf(figures[i]!) }));
  return said.map((one, i) => (i < said.length - 1 ? one.replace(`\u00a0${unit}`, "") : one)).join(" to ");
}

/** As finely as it was written, and to two figures at least. */
function digitsOf(figure: string): number {
  return Math.max(2, figure.replace(/^-?0*\.?0*|\./g, "").length);
}
