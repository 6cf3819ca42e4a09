import { instantOf } from "#log";
import type { LogStore } from "../ports.ts";

/**
 * When the log's newest line was received, by the clock that received it.
 *
 * @returns RFC 3339; undefined where there is no line
 */
export async function newestReceipt(store: Pick<LogStore, "heads" | "since">): Promise<string | undefined> {
  const heads = await store.heads();
  const last = await Promise.all(heads.map(({ place, seq }) => store.since([place], { [place]: seq - 1 }, 1)));
  const received = last.flat().map((kept) => kept.received);
  return received.toSorted((one, other) => instantOf(one) - instantOf(other)).at(-1);
}
