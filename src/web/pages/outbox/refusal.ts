import { FAULT } from "#station";
import type { OutboxLine } from "../../device/index.ts";

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
