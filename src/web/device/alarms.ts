import { CLOCK_WARNING_MS } from "./clock.ts";
import type { ClocksKnown } from "./clock-watch.ts";
import type { Alarm } from "./device-state.ts";
import type { HeldLog } from "./held/held-log.ts";

/**
 * What is wrong with this device: with its disk, and with its clock where it is off by enough to be told. Where the
 * station says that it is its own clock that is off, that is told instead.
 */
export function alarmsOf(disk: readonly Alarm[], { aheadMs, station }: ClocksKnown): readonly Alarm[] {
  if (station !== undefined) return [...disk, { kind: "station-clock", off: station }];
  const isOff = aheadMs !== undefined && Math.abs(aheadMs) >= CLOCK_WARNING_MS;
  return isOff ? [...disk, { kind: "clock", aheadMs }] : disk;
}

/** What is wrong with the station's log, as this device sees it. */
export function logAlarms(
  { putBack, lost, falseSnapshot }: Pick<HeldLog, "putBack" | "lost" | "falseSnapshot">,
  flaw: string | undefined,
): readonly Alarm[] {
  const alarms: Alarm[] = flaw === undefined ? [] : [{ kind: "flaw", flaw }];
  if (putBack !== undefined) alarms.push({ kind: "put-back", found: putBack, waiting: lost.length });
  if (falseSnapshot !== undefined) alarms.push({ kind: "false-snapshot", found: falseSnapshot });
  return alarms;
}
