const ONES =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
const PARTS: Readonly<Record<string, number>> = {
  half: 1 / 2,
  quarter: 1 / 4,
  quarters: 1 / 4,
  third: 1 / 3,
  thirds: 1 / 3,
};
const SPOKEN = new RegExp(
  `\\b(${[...ONES, ...TENS, ...Object.keys(PARTS), "an?", "and", "minus", "point"].join("|")})\\b`,
  "i",
);
/** After these a length of anything begins, and so does "a" for one. */
const BEGINS = ["in", "every", "rising", "falling"];

type Words = readonly string[];

/** A number among words, and where what follows it begins. */
interface Found {
  readonly value: number;
  readonly next: number;
}

/**
 * Numbers said in words, as a telephone writes down what is spoken, turned into figures; all else stays.
 *
 * @param text - "two feet six inches", "an hour and a half", "half a metre", "three and a half inches"
 * @returns "2 feet 6 inches", "1.5 hour", "0.5 metre", "3.5 inches"
 * @range English, up to 999,999
 * @source DERIVED
 * @example spokenFigures("two feet six inches") // "2 feet 6 inches"
 */
export function spokenFigures(text: string): string {
  if (!SPOKEN.test(text)) return text;
  const words = text
    .trim()
    .replace(/([a-z])-(?=[a-z])/gi, "$1 ")
    .split(/\s+/);
  const said: string[] = [];
  let at = 0;
  while (at < words.length) {
    const found = begins(words, at) ? amountAt(words, at) : undefined;
    if (found === undefined) {
      if (!joinsParts(words, at)) said.push(words[at]!);
      at += 1;
    } else {
      const { value, next } = withHalf(words, found);
      said.push(String(value));
      if (next > found.next) said.push(words[found.next]!);
      at = next;
    }
  }
  return said.join(" ").replace(/^minus /i, "-");
}

function wordAt(words: Words, at: number): string {
  return (words[at] ?? "").toLowerCase();
}

/** "a" and "an" are one only where an amount begins: "5 cm a minute" has another. */
function begins(words: Words, at: number): boolean {
  const isArticle = ["a", "an"].includes(wordAt(words, at));
  return !isArticle || at === 0 || BEGINS.includes(wordAt(words, at - 1));
}

/** "2 m and 30 cm": the word between two parts says nothing. */
function joinsParts(words: Words, at: number): boolean {
  return wordAt(words, at) === "and" && at > 0 && amountAt(words, at + 1) !== undefined;
}

function amountAt(words: Words, at: number): Found | undefined {
  const part = fractionAt(words, at);
  if (part !== undefined) return part;
  const whole = wholeAt(words, at) ?? articleAt(words, at);
  const from = whole ?? { value: 0, next: at };
  const exact = wordAt(words, from.next) === "point" ? decimalsAt(words, from) : whole;
  return exact && plusFraction(words, exact);
}

function articleAt(words: Words, at: number): Found | undefined {
  return ["a", "an"].includes(wordAt(words, at)) ? { value: 1, next: at + 1 } : undefined;
}

/** Half a, a quarter of an, three quarters, two thirds of a. */
function fractionAt(words: Words, at: number): Found | undefined {
  const count = wordAt(words, at) in PARTS ? { value: 1, next: at } : (wholeAt(words, at) ?? articleAt(words, at));
  if (count === undefined) return undefined;
  const part = PARTS[wordAt(words, count.next)];
  if (part === undefined) return undefined;
  const next = wordAt(words, count.next + 1) === "of" ? count.next + 2 : count.next + 1;
  return { value: count.value * part, next: ["a", "an"].includes(wordAt(words, next)) ? next + 1 : next };
}

/** "three and a half": the fraction comes before the unit. */
function plusFraction(words: Words, found: Found): Found {
  if (wordAt(words, found.next) !== "and" || !Number.isInteger(found.value)) return found;
  const part = fractionAt(words, found.next + 1);
  return part === undefined ? found : { value: found.value + part.value, next: part.next };
}

/** "an hour and a half": the fraction comes after the unit, and nothing after it. */
function withHalf(words: Words, found: Found): Found {
  const [after, last] = [found.next + 1, words.length];
  if (wordAt(words, after) !== "and" || !Number.isInteger(found.value)) return found;
  const part = fractionAt(words, after + 1);
  return part?.next === last ? { value: found.value + part.value, next: last } : found;
}

function decimalsAt(words: Words, { value, next }: Found): Found | undefined {
  let at = next + 1;
  let digits = "";
  while (digitOf(wordAt(words, at)) !== undefined) {
    digits += digitOf(wordAt(words, at))!;
    at += 1;
  }
  return digits === "" ? undefined : { value: Number(`${value}.${digits}`), next: at };
}

function digitOf(word: string): string | undefined {
  const digit = ONES.indexOf(word);
  if (digit >= 0 && digit < 10) return String(digit);
  return /^\d$/.test(word) ? word : undefined;
}

/** "fifty five", "two hundred and fifty", "one thousand two hundred"; figures too, which words may follow. */
function wholeAt(words: Words, at: number): Found | undefined {
  if (/^\d+$/.test(wordAt(words, at))) return { value: Number(words[at]), next: at + 1 };
  const hundreds = hundredsAt(words, at);
  if (hundreds === undefined || wordAt(words, hundreds.next) !== "thousand") return hundreds;
  const rest = restAt(words, hundreds.next + 1, hundredsAt);
  return { value: 1000 * hundreds.value + rest.value, next: rest.next };
}

function hundredsAt(words: Words, at: number): Found | undefined {
  const small = smallAt(words, at);
  if (small === undefined || wordAt(words, small.next) !== "hundred") return small;
  const rest = restAt(words, small.next + 1, smallAt);
  return { value: 100 * small.value + rest.value, next: rest.next };
}

function restAt(words: Words, at: number, read: (words: Words, at: number) => Found | undefined): Found {
  const from = wordAt(words, at) === "and" ? at + 1 : at;
  return read(words, from) ?? { value: 0, next: at };
}

function smallAt(words: Words, at: number): Found | undefined {
  const one = ONES.indexOf(wordAt(words, at));
  if (one >= 0) return { value: one, next: at + 1 };
  const tens = TENS.indexOf(wordAt(words, at));
  if (tens < 0) return undefined;
  const over = ONES.indexOf(wordAt(words, at + 1));
  const value = 10 * (tens + 2);
  return over > 0 && over < 10 ? { value: value + over, next: at + 2 } : { value, next: at + 1 };
}
