import type { LogStore, StationFold } from "#station";

const PAGE = 10_000;

/** Reads everything a store holds into a fold. */
export async function readWholeLog(log: LogStore, fold: StationFold): Promise<void> {
  for (const { place, seq } of await log.heads()) {
    for (let from = 0; from < seq;) {
      const page = await log.since([place], { [place]: from }, PAGE);
      fold.add(page);
      from = page.at(-1)?.seq ?? seq;
    }
  }
}
