import type { Entry } from "#log";
import type { OutboxLine } from "../held/device-store.ts";
import { waitingForHanded } from "../handed/index.ts";

/** Small enough that one part gets through a network that comes and goes. */
export const PART_LINES = 250;
export const PART_BYTES = 256 * 1024;

/**
 * Lines that this person may send from this device now, oldest first. Others' wait until they sign in again, and strikes
 * of lines that were handed over until the station has those from the device that wrote them.
 *
 * @param handed - ids of lines handed over that the station is not known to have
 */
export function linesToSend(
  outbox: readonly OutboxLine[],
  who: { readonly person: string; readonly device: string },
  handed: ReadonlySet<string> = new Set(),
): readonly Entry[] {
  const own = outbox
    .filter(({ state, entry }) => state === "unsent" && entry.by === who.person && entry.device === who.device)
    .map(({ entry }) => entry)
    .sort((one, other) => (one.id < other.id ? -1 : 1));
  const waiting = waitingForHanded(own, handed);
  return own.filter(({ id }) => !waiting.has(id));
}

/** Cuts lines into parts, in order, each within both limits; a line too long by itself is a part by itself. */
export function cutIntoParts(
  lines: readonly Entry[],
  mostLines = PART_LINES,
  mostBytes = PART_BYTES,
): readonly Entry[][] {
  const parts: Entry[][] = [];
  let bytes = 0;
  for (const line of lines) {
    const size = JSON.stringify(line).length;
    const last = parts.at(-1);
    if (last === undefined || last.length >= mostLines || bytes + size > mostBytes) {
      parts.push([line]);
      bytes = size;
    } else {
      last.push(line);
      bytes += size;
    }
  }
  return parts;
}

/** Wait before the next try after so many in vain [ms]: 2 s doubling to 15 s, spread so that devices do not call in step. */
export function waitAfter(failures: number, chance: number): number {
  const whole = Math.min(15_000, 2000 * 2 ** Math.max(0, failures - 1));
  return whole * (0.75 + chance / 2);
}
