import { CLOCK_WARNING_MS } from "./clock.ts";
import type { Alarm } from "./device-state.ts";

/** What is wrong with this device: with its disk, and with its clock where it is off by enough to be told. */
export function alarmsOf(disk: readonly Alarm[], aheadMs: number | undefined): readonly Alarm[] {
  const isOff = aheadMs !== undefined && Math.abs(aheadMs) >= CLOCK_WARNING_MS;
  return isOff ? [...disk, { kind: "clock", aheadMs }] : disk;
}
