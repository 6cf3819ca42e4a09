import { levelUnit, type Words } from "#words";
import { isQuantity, parseQuantity, unitsOf, type UnitSystem } from "#base";
import { LEVEL_LIMITS } from "#readiness";

/** How far one tap goes, in the person's own unit. */
const STEPS: Readonly<Record<UnitSystem, readonly [small: number, large: number]>> = { metric: [1, 5], us: [0.5, 2] };

/** The steps of a level: down large, down small, up small, up large. */
export function levelSteps(system: UnitSystem): readonly number[] {
  const [small, large] = STEPS[system];
  return [-large, -small, small, large];
}

/**
 * A level one tap further, on a round figure of the person's own unit.
 *
 * @param level - where it stands [m]; the last sounding, or nothing
 * @param step - in the person's own unit
 */
export function stepLevel(level: number, step: number, system: UnitSystem): number {
  const unit = levelUnit(system);
  const [small] = STEPS[system];
  const shown = Math.round((unit.of(level) + step) / small) * small;
  return Math.min(LEVEL_LIMITS.atMost, parseQuantity(`${Math.max(0, shown)} ${unit.symbol}`, "length"));
}

/**
 * A level as typed: a bare number is in the person's own unit, with any other unit it is as people say it ("2 ft 6 in").
 *
 * @returns [m]; undefined where the text is no level from 0 to 10 m
 */
export function readLevel(text: string, system: UnitSystem): number | undefined {
  const { symbol } = levelUnit(system);
  const plain = text
    .trim()
    .replace(",", ".")
    .replace(new RegExp(` ?${symbol}$`), "");
  const isBare = /^\d+\.?\d*$|^\.\d+$/.test(plain);
  const said = isBare ? `${Number(plain)} ${symbol}` : text;
  if (!isQuantity(said, "length")) return undefined;
  const level = parseQuantity(said, "length");
  return level >= LEVEL_LIMITS.atLeast && level <= LEVEL_LIMITS.atMost ? level : undefined;
}

/** Units that a keypad of digits has no letters for: a skipper reads them off his own stick. */
export const KEYED_UNITS = ["ft", "in"] as const;

/**
 * What was typed with a unit put after its last figure: "2" and ft become "2 ft ", and "2 ft 6" and in "2 ft 6 in".
 *
 * @returns undefined where no figure waits for this unit, or the text would be no level and could not become one
 */
export function withUnit(text: string, unit: (typeof KEYED_UNITS)[number], system: UnitSystem): string | undefined {
  const typed = text.trim();
  if (!/[\d\u00bc-\u00be]$/.test(typed)) return undefined;
  const said = `${typed} ${unit}`;
  if (!isQuantity(said, "length")) return undefined;
  if (readLevel(said, system) === undefined) return undefined;
  return unit === "ft" ? `${said} ` : said;
}

/** True where the last letters may still become a unit: nobody is corrected in the middle of a word. */
function isInUnit(text: string): boolean {
  const [, number, letters] = /^(.*\d)\s*([a-z]+)$/i.exec(text.trim()) ?? [];
  if (number === undefined) return false;
  const names = unitsOf("length").flatMap((unit) => unit.names);
  return names.some((name) => name.startsWith(letters!.toLowerCase()));
}

/** True where parts follow one another, and the last has no unit yet: "2 ft 6". */
function isInParts(text: string): boolean {
  const before = text.trim().replace(/\s*\d+[.,]?\d*$/, "");
  return before !== text.trim() && /[a-z'"]$/i.test(before) && isQuantity(before, "length");
}

/** Whether a text may still become a level while somebody types. */
function isBegun(text: string, system: UnitSystem): boolean {
  const { symbol } = levelUnit(system);
  const begun = text.trim().replace(new RegExp(` ?${symbol[0]}$`), "");
  const isNearly = [".", ","].includes(begun) || readLevel(begun, system) !== undefined;
  if (/\/0+(?!\d)/.test(text)) return false;
  return isNearly || isInUnit(text) || isInParts(text) || isInFraction(text);
}

/** True in the middle of a fraction: "2 ft 6 1/", "1/2". */
function isInFraction(text: string): boolean {
  return /(^|\s)\d+\/([1-9]\d*)?$/.test(text.trim());
}

/**
 * Why a text is no level, for its field; nothing while it may still become one.
 *
 * @param isDone - true once the person has left the field: what only began is no level then
 */
export function levelFault(
  text: string,
  system: UnitSystem,
  words: Words["soundings"],
  isDone = false,
): string | undefined {
  const { symbol, of } = levelUnit(system);
  if (text.trim() === "" || readLevel(text, system) !== undefined) return undefined;
  if (!isDone && isBegun(text, system)) return undefined;
  return words.levelFault({
    low: Math.floor(of(LEVEL_LIMITS.atLeast)),
    high: Math.floor(of(LEVEL_LIMITS.atMost)),
    unit: symbol,
    example: system === "metric" ? 41 : 16,
  });
}

/** A level as it stands in the box: to a tenth of the person's own unit. */
export function sayTyped(level: number | undefined, system: UnitSystem): string {
  return level === undefined ? "" : String(Math.round(10 * levelUnit(system).of(level)) / 10);
}
