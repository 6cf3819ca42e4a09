import { levelUnit } from "#words";
import { parseQuantity, type UnitSystem } from "#base";
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
 * A level as typed, in the person's own unit, with its symbol or without.
 *
 * @returns [m]; undefined where the text is no level from 0 to 10 m
 */
export function readLevel(text: string, system: UnitSystem): number | undefined {
  const { symbol } = levelUnit(system);
  const plain = text
    .trim()
    .replace(",", ".")
    .replace(new RegExp(` ?${symbol}$`), "");
  if (!/^\d+\.?\d*$|^\.\d+$/.test(plain)) return undefined;
  const level = parseQuantity(`${Number(plain)} ${symbol}`, "length");
  return level <= LEVEL_LIMITS.atMost ? level : undefined;
}

/** Why a text is no level, for its field; nothing while it may still become one. */
export function levelFault(text: string, system: UnitSystem): string | undefined {
  const { symbol, of } = levelUnit(system);
  const begun = text.trim().replace(new RegExp(` ?${symbol[0]}$`), "");
  if (["", ".", ","].includes(begun) || readLevel(begun, system) !== undefined) return undefined;
  if (readLevel(text, system) !== undefined) return undefined;
  const [low, high] = [LEVEL_LIMITS.atLeast, LEVEL_LIMITS.atMost].map((limit) => Math.floor(of(limit)));
  return `A level here is a number from ${low} to ${high} ${symbol}, such as ${system === "metric" ? 41 : 16}.`;
}

/** A level as it stands in the box: to a tenth of the person's own unit. */
export function sayTyped(level: number | undefined, system: UnitSystem): string {
  return level === undefined ? "" : String(Math.round(10 * levelUnit(system).of(level)) / 10);
}
