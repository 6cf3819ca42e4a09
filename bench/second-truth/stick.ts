// What is written of her: levels read off a stick, times off a watch.
import type { Casualty } from "./casualties.ts";
import type { Written } from "./sheet.ts";

/** Two soundings are never written at one time [s]. */
const APART = 20;

export interface Log {
  readonly readings: readonly { readonly at: number; readonly level: number }[];
  readonly pumping: readonly { readonly from: number; readonly flow: number }[];
  readonly patches: readonly { readonly at: number; readonly open: number }[];
}

/**
 * All that is ever written of her, if she is never lost.
 *
 * @param casualty - sounded as it says
 * @param levels - true ones at its soundings [m]
 */
export function writeLog(casualty: Casualty, levels: readonly number[]): Log {
  const { chance, soundings } = casualty;
  const off = (at: number): number => Math.round(at + casualty.stick.timeError * chance.normal());
  const readings: { at: number; level: number }[] = [];
  soundings.slice(0, levels.length).forEach((at, n) => {
    const written = Math.max(off(at), (readings.at(-1)?.at ?? Number.NEGATIVE_INFINITY) + APART);
    readings.push({ at: written, level: readStick(casualty, levels[n]!, n) });
  });
  return {
    readings,
    pumping: casualty.pumps.map(({ from, stated }) => ({ from: off(from), flow: stated })),
    patches: casualty.patches.map(({ at, open }) => ({ at: off(at), open })),
  };
}

/** To the centimetre, and never below the floor. */
function readStick({ chance, error, slip, stick }: Casualty, level: number, sounding: number): number {
  const slosh = chance.happens(stick.sloshShare) ? stick.slosh * chance.normal() : 0;
  const slipped = slip?.sounding === sounding ? slip.by : 0;
  return Math.max(0, Math.round(100 * (level + error * chance.normal() + slosh + slipped)) / 100);
}

/** What of it is written by a sounding: that one and those before, and what was changed before it. */
export function writtenBy(log: Log, casualty: Casualty, sounding: number): Written {
  const at = casualty.soundings[sounding]!;
  const readings = log.readings.slice(0, sounding + 1);
  const pumping = log.pumping.filter((_, n) => casualty.pumps[n]!.from <= at);
  const patches = log.patches.filter((_, n) => casualty.patches[n]!.at <= at);
  const times = [...readings, ...patches].map((one) => one.at);
  return { now: Math.max(...times, ...pumping.map((one) => one.from)), readings, pumping, patches };
}
