import { Client } from "pg";
import type { AppendListener } from "#station";

export const CHANNEL = "drykeel_append";
/** Pause before trying anew to listen [ms]. */
const PAUSE = 1000;
/** A connection that only listens is asked this often whether it is still there [ms], and has so long to answer [ms]. */
const BEAT = 15_000;
const ANSWER = 10_000;

/**
 * Hears of every append to the database, by whichever process. Holds one connection of its own, made when the first
 * listener comes, and made anew when it is lost; what was missed meanwhile is told as "any place may have changed".
 */
export class AppendWatch {
  readonly #url: string;
  readonly #listeners = new Set<AppendListener>();
  #client: Client | undefined;
  #pause: NodeJS.Timeout | undefined;
  #beat: NodeJS.Timeout | undefined;
  #closed = false;

  constructor(url: string) {
    this.#url = url;
  }

  listen(listener: AppendListener): () => void {
    this.#listeners.add(listener);
    if (this.#client === undefined) void this.#connect();
    return () => this.#listeners.delete(listener);
  }

  async close(): Promise<void> {
    this.#closed = true;
    this.#listeners.clear();
    clearTimeout(this.#pause);
    clearInterval(this.#beat);
    await this.#client?.end();
  }

  async #connect(): Promise<void> {
    const limits = { connectionTimeoutMillis: ANSWER, query_timeout: ANSWER, keepAlive: true };
    const client = new Client({ connectionString: this.#url, ...limits });
    this.#client = client;
    client.on("notification", ({ payload }) => this.#tell(readPlaces(payload)));
    client.on("error", () => this.#reconnect(client));
    client.on("end", () => this.#reconnect(client));
    try {
      await client.connect();
      await client.query(`listen ${CHANNEL}`);
      this.#keepAsking(client);
      this.#tell([]);
    } catch {
      // Out of reach for now: the store's own calls report that to whoever made them, the watch only tries again.
      this.#reconnect(client);
    }
  }

  /** A database that was frozen or whose computer is gone says nothing, and so does one that has no news. */
  #keepAsking(client: Client): void {
    this.#beat = setInterval(() => {
      client.query("select 1").catch(() => this.#reconnect(client));
    }, BEAT).unref();
  }

  #reconnect(lost: Client): void {
    if (this.#closed || this.#client !== lost || this.#pause !== undefined) return;
    clearInterval(this.#beat);
    // It may be lost already, or end only when the other side speaks again: neither is waited for.
    lost.end().catch(() => undefined);
    this.#pause = setTimeout(() => {
      this.#pause = undefined;
      void this.#connect();
    }, PAUSE);
    this.#pause.unref();
  }

  #tell(places: readonly string[]): void {
    for (const listener of this.#listeners) listener(places);
  }
}

/** Payload of one notification: places as JSON, or empty where they were too many to name. */
export function writePlaces(places: readonly string[]): string {
  const payload = JSON.stringify(places);
  return payload.length < 7900 ? payload : "[]";
}

function readPlaces(payload: string | undefined): readonly string[] {
  return JSON.parse(payload === undefined || payload === "" ? "[]" : payload) as string[];
}
