import { parseInstant } from "#log";
import type { LogStore, StoredLog } from "../ports.ts";

/**
 * When the log's newest line was received, by the clock that received it. A time of receipt that is no instant tells
 * nothing and is left out: `verify` reports it.
 *
 * @returns RFC 3339; undefined where there is no line
 */
export async function newestReceipt(store: Pick<LogStore, "heads" | "since">): Promise<string | undefined> {
  const heads = await store.heads();
  const last = await Promise.all(heads.map(({ place, seq }) => store.since([place], { [place]: seq - 1 }, 1)));
  return newestOf(last.flat());
}

type Tables = Pick<StoredLog, "storedPlaces" | "storedHead" | "storedLines">;

/** The same from the tables as they are, where no line need be one. */
export async function newestStoredReceipt(store: Tables): Promise<string | undefined> {
  const places = await store.storedPlaces();
  const last = await Promise.all(
    places.map(async (place) => store.storedLines(place, ((await store.storedHead(place))?.seq ?? 0) - 1, 1)),
  );
  return newestOf(last.flat());
}

function newestOf(lines: readonly { readonly received: string }[]): string | undefined {
  const read = lines.flatMap(({ received }) => {
    const at = parseInstant(String(received));
    return at === undefined ? [] : [{ at, received }];
  });
  return read.toSorted((one, other) => one.at - other.at).at(-1)?.received;
}
