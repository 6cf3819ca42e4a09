import { stationEvents } from "#station";
import type { WholeLog } from "../log/whole-log.ts";
import type { Parts } from "../parts.ts";

/** A month of the station as a PDF. */
export async function printMonth(parts: Parts, log: WholeLog, month: string): Promise<Uint8Array> {
  const reading = (await log.read()).read();
  const now = parts.ambient.now();
  const { renderMonthSheet } = await import("#paper");
  return renderMonthSheet({
    stationName: reading.stationName,
    month,
    events: stationEvents(reading, now),
    people: new Map(reading.people.map(({ id, name }) => [id, name])),
    now,
  });
}
