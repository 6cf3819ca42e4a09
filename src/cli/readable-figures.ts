import { addDays, formatDate, formatEstimate, formatNumber, formatQuantity, formatSpread, type Dimension } from "#base";
import { sayDuration } from "#words";

/** An estimate's middle with its ends, in SI: 5th, 50th and 95th percentile. */
export interface Spread {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** Units that nobody reads a gauge in, with what they measure. */
const LABORATORY: Readonly<Record<string, Dimension>> = { "m³/s": "flow", K: "temperature", Pa: "pressure" };
/** Units that an estimate is turned from into what people use. */
const EVERYDAY: Readonly<Record<string, Dimension>> = {
  ...LABORATORY,
  m: "length",
  s: "time",
  "m²": "area",
  "m³": "volume",
  rad: "angle",
};

/** What arithmetic leaves of nothing. */
const NOTHING = 1e-9;

/** A computed figure as it is, and in the unit that people use where that is another: "0.0141 m³/s (845 L/min)". */
export function exactWords(value: number, unit: string): string {
  const dimension = LABORATORY[unit];
  const everyday = dimension === undefined ? longWords(value, unit) : ` (${formatQuantity(value, dimension)})`;
  return `${withUnit(plain(value, 5), unit)}${everyday}`;
}

/** An instant counted in seconds from a day, as a day; nobody reads a log in seconds. */
export function dayWords(seconds: number, countedFrom: string): string {
  return formatDate(addDays(countedFrom, Math.floor(seconds / DAY)));
}

const DAY = 86_400;
const YEAR = 365.25 * DAY;

/** Rates that nobody waits for by the second, and times that are counted in days. */
function longWords(value: number, unit: string): string {
  if (unit === "1/s" && value > 0 && value < 1 / DAY) return ` (${plain(value * YEAR, 3)} per year)`;
  return unit !== "s" || value < 2 * DAY ? "" : ` (${sayDuration(value, "figures")})`;
}

/** An estimate no finer than it is known: two figures, in the unit that people use; what is counted is as it is. */
export function estimateWords(value: number, unit: string): string {
  const dimension = EVERYDAY[unit];
  if (dimension !== undefined) return formatEstimate(Math.abs(value) < NOTHING ? 0 : value, dimension);
  if (unit === "" && value > 0.995 && value < 1) return "over 0.99";
  return withUnit(Number.isInteger(value) ? plain(value, 2) : plain(Number(value.toPrecision(2)), 2), unit);
}

/** An estimate with what it lies between nine times in ten: "160 L/min (13 to 1900)". */
export function spreadWords(spread: Spread, unit: string): string {
  const dimension = EVERYDAY[unit];
  if (dimension !== undefined) return formatSpread(spread, dimension);
  const isPerYear = unit === "1/s" && spread.p95 < 1 / DAY;
  const figures = [spread.p05, spread.p50, spread.p95].map((value) => (isPerYear ? value * YEAR : value));
  const [low, middle, high] = figures.map((value) => estimateWords(value, ""));
  return `${withUnit(middle!, isPerYear ? "per year" : unit)} (${low} to ${high})`;
}

function withUnit(figures: string, unit: string): string {
  return unit === "" ? figures : `${figures} ${unit}`;
}

function plain(value: number, digits: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e7) return String(value);
  const size = Math.abs(value);
  return size !== 0 && (size < 1e-4 || size >= 1e7) ? value.toExponential(digits - 1) : formatNumber(value, digits);
}
