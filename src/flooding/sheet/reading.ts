import type { Chances } from "./chances.ts";

/** A sounding on scene: read well, in a slosh, or a slip somewhere about [m]; how often. */
export const WELL = { chance: 0.86 };
export const SLOSH = { chance: 0.12, spread: 0.033 };
export const SLIP = { chance: 0.02, within: 0.8 };
/** Clocks are right to so much [s]. */
export const CLOCK = 10;

/** Draws how far a sounding is off [m], read with so good a stick [m]. */
export function misread(stick: number, chances: Chances): number {
  const which = chances.even();
  if (which < WELL.chance) return stick * chances.normal();
  const isSlosh = which < WELL.chance + SLOSH.chance;
  return isSlosh ? Math.hypot(stick, SLOSH.spread) * chances.normal() : SLIP.within * (chances.even() - 0.5);
}
