import { exportHeader, exportLine, type Entry, type KeptEntry } from "#log";
import type { LogStore } from "../ports.ts";

/** Lines read from the store at once. */
const PAGE = 1000;

/** How much an export holds, filled in as it is written. */
export interface ExportCounts {
  entries: number;
  photos: number;
}

/**
 * The whole log as it stands now, with its photos, as an exported log: the same bytes whoever asks for it, at the shell
 * or over the network. Read in pages, so that a long log needs little memory; what arrives meanwhile is for the next.
 *
 * @param counts - filled in with what was written so far
 * @returns pieces of text, each of whole lines with their line ends
 */
export async function* exportWhole(
  log: LogStore,
  counts: ExportCounts = { entries: 0, photos: 0 },
): AsyncGenerator<string> {
  const chains = await log.heads();
  yield `${exportHeader(chains)}\n`;
  const photos = new Set<string>();
  for (const { place, seq } of chains) {
    for await (const page of pagesOf(log, place, seq)) {
      for (const { entry } of page) for (const hash of photosNamed(entry)) photos.add(hash);
      counts.entries += page.length;
      yield page.map((kept) => `${exportLine({ kind: "kept", kept })}\n`).join("");
    }
  }
  for (const hash of photos) {
    const photo = await log.photo(hash);
    if (photo === undefined) continue;
    counts.photos += 1;
    yield `${exportLine({ kind: "photo", ...photo })}\n`;
  }
}

/** Entries of one place, page by page, up to a seq, whatever is appended meanwhile. */
export async function* pagesOf(log: LogStore, place: string, last: number): AsyncGenerator<readonly KeptEntry[]> {
  for (let seq = 0; seq < last;) {
    const page = (await log.since([place], { [place]: seq }, PAGE)).filter((kept) => kept.seq <= last);
    if (page.length === 0) return;
    yield page;
    seq = page.at(-1)!.seq;
  }
}

/** Hashes of the photos that an entry names. */
export function photosNamed({ body }: Entry): readonly string[] {
  const { photos } = (body ?? {}) as { photos?: readonly ({ readonly hash?: unknown } | null)[] };
  return (Array.isArray(photos) ? photos : []).flatMap((one) => (typeof one?.hash === "string" ? [one.hash] : []));
}
