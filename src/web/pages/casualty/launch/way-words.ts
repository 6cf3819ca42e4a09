import type { Words } from "#words";
import { inUnit } from "#base";
import type { Way } from "./our-boat.ts";

/** "24 kn, 8 min to launch, 12 min from alongside to water, takes 2 kits". */
export function sayWay({ speed, launch, setUp, carries }: Way, words: Words["launch"]): string {
  const knots = `${figureOf(inUnit(speed, "kn", "speed"))}\u00a0kn`;
  return words.way({ speed: knots, launch: minutes(launch), setUp: minutes(setUp), count: carries });
}

function minutes(si: number): string {
  return `${figureOf(inUnit(si, "min", "time"))}\u00a0min`;
}

/** As it was set, to three figures and without idle zeros. */
function figureOf(value: number): number {
  return Number(value.toPrecision(3));
}
