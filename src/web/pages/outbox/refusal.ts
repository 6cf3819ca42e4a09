import { FAULT } from "#station";
import type { OutboxLine } from "#web/device/index.ts";

/** True where the line was refused for its time, and for nothing else that sending it again could not mend. */
export function isForClock(line: OutboxLine): boolean {
  return line.state === "refused" && (line.faults ?? []).some(({ code }) => code === FAULT.clock);
}

/**
 * How far ahead the clock was when these lines were written, as measured when the station refused them [ms].
 * The smallest measured: no line is moved further than is known to be right.
 */
export function aheadOf(lines: readonly OutboxLine[]): number | undefined {
  const measured = lines.flatMap(({ aheadMs }) => aheadMs ?? []);
  return measured.length === lines.length && measured.length > 0 ? Math.min(...measured) : undefined;
}

/**
 * How far the clock was ahead when a line was dated, by the word of whoever wrote it [ms].
 *
 * @param dated - the time on the line
 * @param written - when it was really written, as told; undefined until it is
 * @param now - this device's clock as it is now [ms]
 * @returns undefined until a time is told that has come
 */
export function aheadByTelling(dated: string, written: string | undefined, now: number): number | undefined {
  if (written === undefined || Date.parse(written) > now) return undefined;
  return Date.parse(dated) - Date.parse(written);
}
