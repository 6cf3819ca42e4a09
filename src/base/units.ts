/** What a quantity measures. */
export type Dimension =
  | "length"
  | "area"
  | "volume"
  | "flow"
  | "pressure"
  | "mass"
  | "temperature"
  | "time"
  | "speed"
  | "angle"
  | "power"
  | "voltage"
  | "resistance"
  | "salinity"
  | "specific-consumption"
  | "ratio"
  | "density"
  | "rate";

/** One unit: SI value = number × factor + offset. */
export interface Unit {
  /** As written on screen and paper. */
  readonly symbol: string;
  /** Accepted spellings, the symbol among them; matched exactly first, then without regard to case. */
  readonly names: readonly string[];
  readonly factor: number;
  readonly offset?: number;
  /** Systems that read values in this unit, from this SI size up. */
  readonly shownIn?: readonly ("metric" | "us")[];
  readonly shownFrom?: number;
}

// Exact by definition: NIST SP 811 (2008), appendix B: inch, foot, pound, US gallon, psi, standard gravity.
const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const LITRE = 1e-3;
const US_GALLON = 231 * INCH ** 3;
const IMP_GALLON = 4.54609 * LITRE;
const PSI = (POUND * GRAVITY) / INCH ** 2;
// Conventional: NIST SP 811 (2008), appendix B.8: inch of mercury (conventional) and metre/foot of water (conventional).
const INCH_OF_MERCURY = 3386.389;
const METRE_OF_WATER = 9806.65;
const MINUTE = 60;
const HOUR = 3600;
/** The Julian year; a month is its twelfth. Days on a calendar are counted by the calendar, never by these. */
const YEAR = 365.25 * 24 * HOUR;
const HORSEPOWER = 550 * FOOT * POUND * GRAVITY;
const FAHRENHEIT_ZERO = 459.67 * (5 / 9);
const KELVIN_OF_ICE = 273.15;

function unit(symbol: string, factor: number, more: Partial<Unit> = {}, ...spellings: string[]): Unit {
  return { symbol, factor, ...more, names: [symbol, ...spellings] };
}

const METRIC = ["metric"] as const;
const US = ["us"] as const;
const BOTH = ["metric", "us"] as const;

/** Units by dimension, smallest shown size first within a system. */
const UNITS: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    unit("mm", 1e-3, { shownIn: METRIC }, "millimetre", "millimetres", "millimeter"),
    unit("cm", 1e-2, {}, "centimetre", "centimetres"),
    unit("m", 1, { shownIn: METRIC, shownFrom: 0.2995 }, "metre", "metres", "meter", "meters"),
    unit("km", 1000, {}),
    unit("in", INCH, { shownIn: US }, "inch", "inches", '"'),
    unit("ft", FOOT, { shownIn: US, shownFrom: FOOT * 0.995 }, "foot", "feet", "'"),
    unit("nmi", 1852, {}, "NM", "nautical mile", "nautical miles"),
  ],
  area: [
    unit("cm²", 1e-4, { shownIn: METRIC }),
    unit("mm²", 1e-6, {}),
    unit("m²", 1, { shownIn: METRIC, shownFrom: 0.1 }, "sq m", "square metre", "square metres", "square meters"),
    unit("in²", INCH ** 2, { shownIn: US }, "sq in"),
    unit("ft²", FOOT ** 2, { shownIn: US, shownFrom: FOOT ** 2 }, "sq ft", "square foot", "square feet"),
  ],
  volume: [
    unit("mL", 1e-6, { shownIn: METRIC }, "cc", "cm³"),
    unit("L", LITRE, { shownIn: METRIC, shownFrom: 0.9995e-3 }, "l", "litre", "litres", "liter", "liters"),
    unit("m³", 1, { shownIn: METRIC, shownFrom: 10 }, "cubic metre", "cubic metres"),
    unit("in³", INCH ** 3, {}, "cu in"),
    unit("ft³", FOOT ** 3, {}, "cu ft"),
    unit("US fl oz", US_GALLON / 128, { shownIn: US }, "fl oz"),
    unit("US qt", US_GALLON / 4, { shownIn: US, shownFrom: US_GALLON / 4 }, "qt", "quart", "quarts"),
    unit("US gal", US_GALLON, { shownIn: US, shownFrom: US_GALLON * 0.995 }, "gal", "gallon", "gallons", "USgal"),
    unit("imp gal", IMP_GALLON, {}, "UK gal"),
  ],
  flow: [
    unit("L/h", LITRE / HOUR, { shownIn: METRIC }, "l/h", "litres per hour"),
    unit("mL/s", 1e-6, {}),
    unit(
      "L/min",
      LITRE / MINUTE,
      { shownIn: METRIC, shownFrom: (9.95 * LITRE) / HOUR },
      "l/min",
      "lpm",
      "litres per minute",
    ),
    unit("L/s", LITRE, {}, "l/s"),
    unit("m³/h", 1 / HOUR, {}, "m3/hr", "m³/hr"),
    unit("m³/s", 1, {}),
    unit("t/h", 1 / HOUR, {}, "tonnes per hour"),
    unit("US gal/h", US_GALLON / HOUR, { shownIn: US }, "gph", "gal/h"),
    unit(
      "US gpm",
      US_GALLON / MINUTE,
      { shownIn: US, shownFrom: (2 * US_GALLON) / HOUR },
      "gpm",
      "gal/min",
      "US gal/min",
    ),
    unit("imp gpm", IMP_GALLON / MINUTE, {}),
  ],
  pressure: [
    unit("kPa", 1000, { shownIn: METRIC }),
    unit("Pa", 1, {}),
    unit("hPa", 100, {}, "mbar"),
    unit("bar", 1e5, { shownIn: METRIC, shownFrom: 199_500 }),
    unit("MPa", 1e6, {}),
    unit("m water", METRE_OF_WATER, {}, "mH2O", "m of water"),
    unit("ft water", FOOT * METRE_OF_WATER, {}, "ftH2O", "ft of water"),
    unit("inHg", INCH_OF_MERCURY, {}, "in Hg", "inches of mercury"),
    unit("mmHg", 133.3224, {}, "mm Hg"),
    unit("atm", 101_325, {}),
    unit("psi", PSI, { shownIn: US }, "lb/in2", "lbf/in2"),
  ],
  mass: [
    unit("g", 1e-3, { shownIn: METRIC }),
    unit("kg", 1, { shownIn: METRIC, shownFrom: 0.9995 }),
    unit("t", 1000, { shownIn: METRIC, shownFrom: 9950 }, "tonne", "tonnes"),
    unit("oz", POUND / 16, { shownIn: US }),
    unit("lb", POUND, { shownIn: US, shownFrom: POUND * 0.995 }, "lbs", "pound", "pounds"),
  ],
  temperature: [
    unit("°C", 1, { offset: KELVIN_OF_ICE, shownIn: METRIC }, "C", "degC", "deg C", "celsius"),
    unit("°F", 5 / 9, { offset: FAHRENHEIT_ZERO, shownIn: US }, "F", "degF", "deg F", "fahrenheit"),
    unit("K", 1, {}, "kelvin"),
  ],
  time: [
    unit("s", 1, { shownIn: BOTH }, "sec", "secs", "second", "seconds"),
    unit("min", MINUTE, { shownIn: BOTH, shownFrom: 119.5 }, "mins", "minute", "minutes"),
    unit("h", HOUR, { shownIn: BOTH, shownFrom: 3 * HOUR }, "hr", "hrs", "hour", "hours"),
    unit("d", 24 * HOUR, {}, "day", "days"),
    unit("wk", 7 * 24 * HOUR, {}, "week", "weeks"),
    unit("months", YEAR / 12, {}, "month"),
    unit("years", YEAR, {}, "year", "yr"),
  ],
  speed: [
    unit("m/s", 1, { shownIn: METRIC }),
    unit("ft/s", FOOT, { shownIn: US }),
    unit("kn", 1852 / HOUR, {}, "knot", "knots", "kt", "kts"),
    unit("km/h", 1 / 3.6, {}),
  ],
  angle: [unit("°", Math.PI / 180, { shownIn: BOTH }, "deg", "degree", "degrees"), unit("rad", 1, {})],
  power: [
    unit("W", 1, { shownIn: METRIC }),
    unit("kW", 1000, { shownIn: METRIC, shownFrom: 1000 }),
    unit("hp", HORSEPOWER, { shownIn: US }),
  ],
  voltage: [unit("V", 1, { shownIn: BOTH }, "volt", "volts")],
  resistance: [
    unit("mΩ", 1e-3, {}, "mohm", "milliohm", "milliohms"),
    unit("Ω", 1, { shownIn: BOTH }, "ohm", "ohms", "\u2126"),
    unit("kΩ", 1e3, { shownIn: BOTH, shownFrom: 999.5 }, "kohm", "kilohm", "kilohms"),
    unit("MΩ", 1e6, { shownIn: BOTH, shownFrom: 999_500 }, "Mohm", "megohm", "megohms"),
  ],
  salinity: [unit("g/kg", 1, { shownIn: BOTH }, "PSU", "psu", "")],
  "specific-consumption": [
    unit("g/kWh", 1e-3 / 3.6e6, { shownIn: METRIC }),
    unit("kg/J", 1, {}),
    unit("lb/hph", POUND / (HORSEPOWER * HOUR), { shownIn: US }, "lb/hp·h", "lb/(hp h)"),
  ],
  ratio: [unit("", 1, { shownIn: BOTH }), unit("%", 0.01, {}, "percent")],
  density: [unit("kg/m³", 1, { shownIn: METRIC }), unit("lb/ft³", POUND / FOOT ** 3, { shownIn: US })],
  rate: [
    unit("/min", 1 / MINUTE, { shownIn: BOTH }, "1/min", "per minute", "rpm"),
    unit("/s", 1, {}, "1/s", "per second", "Hz"),
    unit("/h", 1 / HOUR, {}, "1/h", "per hour"),
    unit("/d", 1 / (24 * HOUR), {}, "1/d", "per day"),
    unit("/year", 1 / YEAR, {}, "1/year", "per year", "/yr", "a year"),
  ],
};

/** Units of a dimension. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return UNITS[dimension];
}

/** Every dimension known. */
export function dimensions(): readonly Dimension[] {
  return Object.keys(UNITS) as Dimension[];
}
