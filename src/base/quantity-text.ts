import { spokenFigures } from "./spoken-figures.ts";
import { dimensions, unitsOf, type Dimension, type Unit } from "./units.ts";

/** What a text was read as, or what is wrong with it. */
export type ReadText =
  | { readonly si: number }
  | { readonly code: "BA-101" | "BA-102" | "BA-104" | "BA-105" | "BA-106"; readonly remedy: string };

const FRACTIONS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};
const VULGAR = Object.keys(FRACTIONS).join("");
/** Three and a half as 3½, 3 ½, 3 1/2 or 3-1/2; or a decimal, with point or comma. */
const NUMBER = `\\d+\\s*[${VULGAR}]|[${VULGAR}]|\\d+[\\s-]+\\d+\\/\\d+|\\d+\\/\\d+|(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:e[+-]?\\d+)?`;
const ONE = new RegExp(`^([+-]?)(${NUMBER})\\s*(.*)$`, "i");
const PART = new RegExp(`(${NUMBER})\\s*([^\\d\\s.,${VULGAR}]+)\\s*`, "giy");
/** Ends in a number without a unit. */
const OPEN = new RegExp(`^(.*[^\\d\\s.,/-])\\s*(${NUMBER})$`, "i");
const CLOCK = /^\d{1,2}:\d{2}(:\d{2})?(\s*(h|hours?|min|minutes?))?$/i;
const THOUSANDS = /^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d+)?(?![\d,])/;
/** So much in so long. */
const IN_TIME = /^(.+)\s+(?:in|every)\s+(\d.*)$/i;
const PER = /^(.*?)\s*(?:\/|\bper\b|\ban?\b)\s*(.*)$/i;
/** Which way a level goes, said before how fast. */
const GOES = /^(rising|falling)\s+(?=\d)/i;
/** Minutes after hours, by their letter alone: there it cannot be metres. */
const SHORT_MINUTES = /(\d\s*h\s*\d+\s*)m(?=\s|\d|$)/i;

/** No quantity is said in more characters. */
const LONGEST = 100;
/** Dimensions whose quantities are said in parts: 2 ft 6 in, 1 h 30 min, 3 lb 4 oz. */
const IN_PARTS: readonly Dimension[] = ["length", "time", "mass"];
/** What is said as so much of one thing in so much time. */
const OVER_TIME: Partial<Readonly<Record<Dimension, Dimension>>> = { speed: "length", flow: "volume" };

/**
 * Reads a quantity as people say it.
 *
 * @param given - "8 ft", "2 ft 6 in", "3½ in", "1 h 30 min", "2.5 cm/min", "5 cm in 2 min", "two feet six inches"
 * @param dimension - what it must be
 * @returns the value in SI, or a code and a remedy that names the fault
 * @source DERIVED
 * @example readQuantityText("2 ft 6 in", "length") // { si: 0.762 }
 */
export function readQuantityText(given: string, dimension: Dimension): ReadText {
  if (given.length > LONGEST) return { code: "BA-101", remedy: "Write one quantity, in a few words." };
  const text = plain(given, dimension);
  if (dimension === "time" && CLOCK.test(text)) return { code: "BA-106", remedy: clockRemedy(text) };
  if (THOUSANDS.test(text)) return { code: "BA-105", remedy: thousandsRemedy(text) };
  const read = readOne(text, dimension);
  if ("si" in read) return read;
  return readParts(text, dimension) ?? readOverTime(text, dimension) ?? read;
}

const PART_WORDS = /\b(half|thirds?|quarters?)\b/i;

/** Numbers in words as figures where a unit follows them, else parts such as "half" only. Typographic minus and marks of feet and inches as typed on a keyboard; no full stop after a unit. */
function plain(given: string, dimension: Dimension): string {
  const isSpoken = findUnit("", dimension) === undefined || PART_WORDS.test(given);
  const text = (isSpoken ? spokenFigures(given.trim()) : given.trim())
    .replaceAll("−", "-")
    .replaceAll(/[′’]/g, "'")
    .replaceAll(/[″”]|''/g, '"')
    .replaceAll(/([a-z])\.(?=\s|$)/gi, "$1");
  if (dimension === "time") return text.replace(SHORT_MINUTES, "$1min");
  const goes = dimension === "speed" ? GOES.exec(text) : null;
  if (goes === null) return text;
  return `${goes[1]!.toLowerCase() === "falling" ? "-" : ""}${text.slice(goes[0].length)}`;
}

function clockRemedy(text: string): string {
  const [first, second] = text.split(":").map((part) => Number.parseInt(part, 10));
  return `${text} is a time of day and here a length of time is asked: say ${first} h ${second} min, or ${first} min ${second} s.`;
}

function thousandsRemedy(text: string): string {
  const [whole] = THOUSANDS.exec(text)!;
  return `A comma before three digits may mean thousands or a decimal: write ${whole.replaceAll(",", "")} or ${whole.replace(",", ".")}.`;
}

function readOne(text: string, dimension: Dimension): ReadText {
  const parts = ONE.exec(text);
  if (!parts) return { code: "BA-101", remedy: beginRemedy(text, dimension) };
  const [, sign, number, unitText] = parts;
  const value = numberOf(number!);
  const unit = findUnit(unitText!, dimension);
  if (!unit) return { code: "BA-102", remedy: unitRemedy(number!, unitText!, dimension) };
  return { si: (sign === "-" ? -value : value) * unit.factor + (unit.offset ?? 0) };
}

function numberOf(text: string): number {
  const vulgar = text.at(-1)!;
  if (vulgar in FRACTIONS) return Number(text.slice(0, -1).trim() || 0) + FRACTIONS[vulgar]!;
  if (!text.includes("/")) return Number(text.replace(",", "."));
  const numbers = text.split(/[\s-]+|\//).map(Number);
  const [above, below] = numbers.slice(-2);
  return (numbers.length > 2 ? numbers[0]! : 0) + above! / below!;
}

/** Part by part, each smaller than one of the part before; undefined where the text is not in parts at all. */
function readParts(text: string, dimension: Dimension): ReadText | undefined {
  if (!IN_PARTS.includes(dimension)) return undefined;
  const sign = /^[+-]/.exec(text)?.[0] ?? "";
  const bare = text.slice(sign.length).trim();
  const open = OPEN.exec(bare);
  if (open && partsOf(open[1]!, dimension)?.length)
    return { code: "BA-102", remedy: `${open[2]} of what? Every part needs its unit.` };
  const parts = partsOf(bare, dimension);
  if (parts === undefined || parts.length < 2) return undefined;
  const wrong = parts.findIndex((part, i) => i > 0 && part.value * part.unit.factor >= parts[i - 1]!.unit.factor);
  if (wrong > 0) return { code: "BA-104", remedy: partRemedy(parts[wrong - 1]!, parts[wrong]!) };
  const broken = parts.slice(0, -1).find(({ value }) => !Number.isInteger(value));
  if (broken)
    return {
      code: "BA-104",
      remedy: `Only the last part may be broken: ${broken.value} ${broken.unit.symbol} is not whole.`,
    };
  const size = parts.reduce((sum, { value, unit }) => sum + value * unit.factor, 0);
  return { si: sign === "-" ? -size : size };
}

interface Part {
  readonly value: number;
  readonly unit: Unit;
}

function partsOf(text: string, dimension: Dimension): readonly Part[] | undefined {
  const parts: Part[] = [];
  let end = 0;
  for (const match of text.matchAll(PART)) {
    const unit = findUnit(match[2]!, dimension);
    if (unit === undefined) return undefined;
    parts.push({ value: numberOf(match[1]!), unit });
    end = match.index + match[0].length;
  }
  return end === text.length ? parts : undefined;
}

function partRemedy(before: Part, part: Part): string {
  return `${part.value} ${part.unit.symbol} is not less than 1 ${before.unit.symbol}: the larger unit comes first, and holds what is over.`;
}

/** "5 cm in 2 min", "2.5 cm/min", "20 L per minute"; undefined where the dimension is not said so. */
function readOverTime(text: string, dimension: Dimension): ReadText | undefined {
  const of = OVER_TIME[dimension];
  if (of === undefined) return undefined;
  const inTime = IN_TIME.exec(text);
  if (inTime) return overTime(readQuantityText(inTime[1]!, of), readQuantityText(inTime[2]!, "time"));
  const per = PER.exec(text);
  if (per === null) return undefined;
  const unit = findUnit(per[2]!, "time");
  if (unit !== undefined) return overTime(readQuantityText(per[1]!, of), { si: unit.factor });
  return /^\d/.test(per[2]!) ? overTime(readQuantityText(per[1]!, of), readQuantityText(per[2]!, "time")) : undefined;
}

function overTime(amount: ReadText, time: ReadText): ReadText {
  if (!("si" in amount)) return amount;
  if (!("si" in time)) return time;
  if (time.si > 0) return { si: amount.si / time.si };
  return { code: "BA-104", remedy: "Say in how long: more than no time." };
}

/** The unit of this dimension that is spelt so. */
export function findUnit(text: string, dimension: Dimension): Unit | undefined {
  const wanted = normalise(text);
  return (
    unitsOf(dimension).find((unit) => unit.names.some((name) => normalise(name) === wanted)) ??
    unitsOf(dimension).find((unit) => unit.names.some((name) => normalise(name).toLowerCase() === wanted.toLowerCase()))
  );
}

function normalise(text: string): string {
  return text.replace(/\s+/g, "").replace("²", "2").replace("³", "3").replace("µ", "u").replace("·", "");
}

function beginRemedy(text: string, dimension: Dimension): string {
  const symbol = unitsOf(dimension)[0]!.symbol;
  if (!/[\d½¼¾]/.test(text)) return `Write a number and a unit, such as "2 ${symbol}".`;
  return `Begin with the number, then the unit, and nothing else, such as "2 ${symbol}".`;
}

/** Units that may mean two things. */
const MEANT: readonly {
  readonly dimension: Dimension;
  readonly said: RegExp;
  readonly remedy: (number: string) => string;
}[] = [
  {
    dimension: "time",
    said: /^m$/i,
    remedy: (number) => `"m" is metres, or months: for minutes write ${number} min.`,
  },
  {
    dimension: "length",
    said: /^(miles?|mi)$/i,
    remedy: (number) => `Which miles? Write ${number} nmi for sea miles; land miles in km, 1.6 km each.`,
  },
];

/** What is wrong with the text after the number. */
export function unitRemedy(number: string, unitText: string, dimension: Dimension): string {
  const symbol = unitsOf(dimension)[0]!.symbol;
  const meant = MEANT.find((one) => one.dimension === dimension && one.said.test(unitText));
  if (meant !== undefined) return meant.remedy(number);
  if (unitText === "") return `${number} of what? Add the unit, such as "${number} ${symbol}".`;
  const other = dimensions().find(
    (one) => one !== dimension && unitText !== "" && findUnit(unitText, one) !== undefined,
  );
  if (other !== undefined)
    return `${JSON.stringify(unitText)} is a unit of ${other}, and here a ${dimension} is asked.`;
  return `${JSON.stringify(unitText.slice(0, 40))} is not one of these units.`;
}
