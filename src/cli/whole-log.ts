import type { Person } from "#readiness";
import { STATION_PLACE } from "#log";
import { createStationFold, pagesOf, type LogStore, type StationFold } from "#station";

/** Reads everything a store holds into a fold. */
export async function readWholeLog(log: LogStore, fold: StationFold): Promise<void> {
  for (const { place, seq } of await log.heads()) {
    for await (const page of pagesOf(log, place, seq)) fold.add(page);
  }
}

/** People of the station who have not left. */
export async function readPeople(log: LogStore): Promise<readonly Person[]> {
  const fold = createStationFold([]);
  const head = (await log.heads()).find(({ place }) => place === STATION_PLACE);
  for await (const page of pagesOf(log, STATION_PLACE, head?.seq ?? 0)) fold.add(page);
  return fold.read().people.filter(({ left }) => !left);
}
