/** `hundred`: "97 in 100", never certain and never none. `ten`: "9.7 in 10", where chances told are held against what came. */
export type ChanceStyle = "hundred" | "ten";

/**
 * A chance in words that do not promise.
 *
 * @param chance - 0 to 1
 * @param style - how people count it there
 * @example sayChance(0.9996) // "more than 99 in 100"
 */
export function sayChance(chance: number, style: ChanceStyle = "hundred"): string {
  if (style === "ten") return `${(10 * chance).toFixed(1)} in 10`;
  const hundredths = hundredthsOf(chance);
  if (hundredths === 100) return "more than 99 in 100";
  return hundredths === 0 ? "less than 1 in 100" : `${hundredths} in 100`;
}

/**
 * A chance in whole hundredths, for a message that says them in its own language.
 *
 * @param chance - 0 to 1
 * @returns 0 for less than one in a hundred, 100 for more than 99
 * @example hundredthsOf(0.934) // 93
 */
export function hundredthsOf(chance: number): number {
  return Math.min(100, Math.max(0, Math.round(100 * chance)));
}

/**
 * Between what a chance lies, in hundredths rounded outwards: no finer than anybody reads them, fives from 10 to 90 and ones
 * beyond.
 *
 * @param low - 0 to 1
 * @param high - 0 to 1, no less than low
 * @returns whole hundredths, 0 where less than one, 100 where more than 99
 * @example chanceEnds(0.317, 0.442) // [30, 45]
 */
export function chanceEnds(low: number, high: number): readonly [low: number, high: number] {
  return [outwards(100 * low, Math.floor), outwards(100 * high, Math.ceil)];
}

function outwards(hundredths: number, round: (value: number) => number): number {
  const step = hundredths >= 10 && hundredths <= 90 ? 5 : 1;
  return Math.min(100, Math.max(0, step * round(hundredths / step)));
}

/**
 * A share of what was counted; never nothing or everything where it is only near.
 *
 * @param share - 0 to 1
 * @example sayPercent(0.996) // "over 99 %"
 */
export function sayPercent(share: number): string {
  const round = Math.round(100 * share);
  if (round === 0 && share > 0) return "under 1\u00a0%";
  if (round === 100 && share < 1) return "over 99\u00a0%";
  return `${round}\u00a0%`;
}
