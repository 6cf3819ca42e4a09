import { parseQuantity, type Dimension } from "#base";

/** How many, or what a count may be. */
export type CountRead =
  { readonly kind: "count"; readonly count: number } | { readonly kind: "none"; readonly allowed: string };

/** Figures with whatever marks stand between them, and a unit that begins with a letter. */
const COUNTED = /^(\d[\d.,]*)\s*(\p{L}.*)?$/u;
const BARE = /^\d+(?:[.,]\d+)?$/;
/** A mark before three figures parts thousands in one country and decimals in the next: which, is never guessed. */
const MARKED = /^\d+(?:[.,]\d{3})+$|[.,]\d+[.,]/;
const PLAIN = "figures without a mark for thousands, such as 1000";

const MEASURED: readonly Dimension[] = ["length", "volume", "mass"];

/**
 * Reads a count, with or without its unit: "8", "8 ft", "12 pieces". In another unit it counts only where it comes to whole ones.
 *
 * @param unit - what one is counted in; "" where anything goes
 * @example readCount("1000 mm", "m") // { kind: "count", count: 1 }
 */
export function readCount(text: string, unit: string): CountRead {
  const read = COUNTED.exec(text.trim());
  if (MARKED.test(read?.[1] ?? "")) return { kind: "none", allowed: PLAIN };
  if (!read || !BARE.test(read[1]!)) return { kind: "none", allowed: "a whole number, 0 or more" };
  const count = isSameUnit(read[2], unit) ? Number(read[1]!.replace(",", ".")) : convert(text, unit);
  if (count === undefined) return { kind: "none", allowed: `a count in ${unit}` };
  const whole = Math.round(count);
  if (Math.abs(count - whole) < 1e-9 * Math.max(1, whole)) return { kind: "count", count: whole };
  return { kind: "none", allowed: `a whole number${unit === "" ? "" : ` of ${unit}`}; it is ${count.toPrecision(4)}` };
}

/** The unit written beside a count; undefined where it is bare. */
export function unitBeside(text: string): string | undefined {
  return COUNTED.exec(text.trim())?.[2]?.trim();
}

function isSameUnit(given: string | undefined, unit: string): boolean {
  if (given === undefined || unit === "") return true;
  return bareUnit(given) === bareUnit(unit);
}

function bareUnit(text: string): string {
  return text.trim().toLowerCase().replace(/s$/, "");
}

function convert(text: string, unit: string): number | undefined {
  for (const dimension of MEASURED) {
    const [given, one] = [measure(text, dimension), measure(`1 ${unit}`, dimension)];
    if (given !== undefined && one !== undefined) return given / one;
  }
  return undefined;
}

function measure(text: string, dimension: Dimension): number | undefined {
  try {
    return parseQuantity(text, dimension);
  } catch {
    return undefined;
  }
}
