import { Client } from "pg";
import type { AppendListener } from "#station";

export const CHANNEL = "drykeel_append";
/** Pause before trying anew to listen [ms]. */
const PAUSE = 1000;

/**
 * Hears of every append to the database, by whichever process. Holds one connection of its own, made when the first
 * listener comes, and made anew when it is lost; what was missed meanwhile is told as "any place may have changed".
 */
export class AppendWatch {
  readonly #url: string;
  readonly #listeners = new Set<AppendListener>();
  #client: Client | undefined;
  #pause: NodeJS.Timeout | undefined;
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
    await this.#client?.end();
  }

  async #connect(): Promise<void> {
    const client = new Client({ connectionString: this.#url });
    this.#client = client;
    client.on("notification", ({ payload }) => this.#tell(readPlaces(payload)));
    client.on("error", () => this.#reconnect(client));
    client.on("end", () => this.#reconnect(client));
    try {
      await client.connect();
      await client.query(`listen ${CHANNEL}`);
      this.#tell([]);
    } catch {
      // Out of reach for now: the store's own calls report that to whoever made them, the watch only tries again.
      this.#reconnect(client);
    }
  }

  #reconnect(lost: Client): void {
    if (this.#closed || this.#client !== lost || this.#pause !== undefined) return;
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
