import type { HeldHeads, PullPage, PullPageRequest } from "#station";
import type { ChainHead } from "#log";
import type { Reply, ServerDoor } from "./server-door.ts";

/** Lines in one page of a pull. */
const PULL_LINES = 2000;
/** How long a page may take [ms]. */
const PATIENCE_MS = 60_000;

/** Where a place stands here, with the station's word for it where it gave one. */
export type HeldEnd = ChainHead & { readonly place: string; readonly voucher?: string };

/** A page of the station's log, and where the places stand once it is taken. */
export interface Pulled {
  readonly reply: Reply<PullPage>;
  readonly after: HeldHeads;
}

/**
 * What follows on what is held here, page by page, to the end or the first answer that is none. Each page is asked for
 * while the one before it is checked and written; whoever finds a page wrong stops reading, and the next is forgotten.
 */
export async function* pullPages(door: Pick<ServerDoor, "ask">, ends: readonly HeldEnd[]): AsyncGenerator<Pulled> {
  const unvouched = ends.filter(({ voucher }) => voucher === undefined).map(({ place }) => place);
  let held = heldOf(ends);
  let next = askPage(door, held, unvouched);
  for (let isMore = true; isMore;) {
    const reply = await next;
    if (reply.kind === "answered") held = headsAfter(held, reply.value);
    isMore = reply.kind === "answered" && reply.value.more;
    // The heads of a page come with the station's word for them.
    if (isMore) next = askPage(door, held, []);
    yield { reply, after: held };
  }
}

/** Ends of places as a request tells them. */
export function heldOf(ends: readonly HeldEnd[]): HeldHeads {
  return Object.fromEntries(ends.map(({ place, seq, hash }) => [place, { seq, hash }]));
}

function askPage(
  door: Pick<ServerDoor, "ask">,
  held: HeldHeads,
  unvouched: readonly string[],
): Promise<Reply<PullPage>> {
  const json: PullPageRequest = { held, unvouched: [...unvouched], limit: PULL_LINES };
  return door.ask<PullPage>({ method: "POST", path: "/api/log/pull", json, patience: PATIENCE_MS });
}

function headsAfter(held: HeldHeads, { entries }: PullPage): HeldHeads {
  const after: Record<string, ChainHead> = { ...held };
  for (const { entry, seq, hash } of entries)
    if (seq > (after[entry.place]?.seq ?? 0)) after[entry.place] = { seq, hash };
  return after;
}
