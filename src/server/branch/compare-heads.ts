import type { ChainHead } from "#log";
import type { HeldHeads, LogStore } from "#station";

/**
 * Places where what a device holds is not in the station's log: the log is shorter, or another one from some line on.
 * A number alone does not tell; the chain's hash under it stands for every line before it too.
 */
export async function placesApart(store: LogStore, held: HeldHeads): Promise<readonly string[]> {
  const heads = new Map((await store.heads()).map(({ place, seq, hash }) => [place, { seq, hash }]));
  const apart: string[] = [];
  for (const [place, head] of Object.entries(held)) {
    if (!(await isIn(store, place, head, heads.get(place)))) apart.push(place);
  }
  return apart;
}

async function isIn(store: LogStore, place: string, head: ChainHead, end: ChainHead | undefined): Promise<boolean> {
  if (end === undefined || end.seq < head.seq) return false;
  return end.seq === head.seq ? end.hash === head.hash : holds(store, place, head);
}

/** True where the line under this number has this chain hash. */
async function holds(store: LogStore, place: string, { seq, hash }: ChainHead): Promise<boolean> {
  const [line] = await store.since([place], { [place]: seq - 1 }, 1);
  return line?.seq === seq && line.hash === hash;
}

/**
 * The greatest of these heads that is in the station's log.
 *
 * @param heads - of one place, in any order. Where one is in the log, so are all before it: few need looking up.
 * @returns its number; 0 where none is
 */
export async function lastInCommon(store: LogStore, place: string, heads: readonly ChainHead[]): Promise<number> {
  const sorted = heads.toSorted((one, other) => one.seq - other.seq);
  let [common, beyond] = [-1, sorted.length];
  while (beyond - common > 1) {
    const middle = (common + beyond) >> 1;
    if (await holds(store, place, sorted[middle]!)) common = middle;
    else beyond = middle;
  }
  return sorted[common]?.seq ?? 0;
}
