import type { KeptEntry } from "#log";
import type { LogStore, StationFold } from "#station";

const PAGE = 5000;

/** Entries of one place, page by page, up to a seq, whatever is appended meanwhile. */
export async function* pagesOf(log: LogStore, place: string, last: number): AsyncGenerator<readonly KeptEntry[]> {
  for (let seq = 0; seq < last;) {
    const page = (await log.since([place], { [place]: seq }, PAGE)).filter((kept) => kept.seq <= last);
    if (page.length === 0) return;
    yield page;
    seq = page.at(-1)!.seq;
  }
}

/** Reads everything a store holds into a fold. */
export async function readWholeLog(log: LogStore, fold: StationFold): Promise<void> {
  for (const { place, seq } of await log.heads()) {
    for await (const page of pagesOf(log, place, seq)) fold.add(page);
  }
}
