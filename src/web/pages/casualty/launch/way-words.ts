import { inUnit } from "#base";
import { sayKitCount } from "./before-launch-words.ts";
import type { Way } from "./our-boat.ts";

/** "24 kn, 8 min to launch, 12 min from alongside to water, takes 2 kits". */
export function sayWay({ speed, launch, setUp, carries }: Way): string {
  const knots = `${figureOf(inUnit(speed, "kn", "speed"))}\u00a0kn`;
  return `${knots}, ${minutes(launch)} to launch, ${minutes(setUp)} from alongside to water, takes ${sayKitCount(carries)}`;
}

function minutes(si: number): string {
  return `${figureOf(inUnit(si, "min", "time"))}\u00a0min`;
}

/** As it was set, to three figures and without idle zeros. */
function figureOf(value: number): number {
  return Number(value.toPrecision(3));
}
