import type Database from "better-sqlite3";
import type { AppendListener } from "#station";

/** How often to ask whether another program has written to the file [ms]. */
const LOOK = 1000;

/**
 * Tells of appends: of this process's own at once, and within a second of any by another program on the same file,
 * such as `drykeel import`, as "any place may have changed".
 */
export class AppendWatch {
  readonly #raw: Database.Database;
  readonly #listeners = new Set<AppendListener>();
  #look: NodeJS.Timeout | undefined;
  #version: unknown;

  constructor(raw: Database.Database) {
    this.#raw = raw;
  }

  listen(listener: AppendListener): () => void {
    this.#listeners.add(listener);
    if (this.#look === undefined) this.#begin();
    return () => this.#listeners.delete(listener);
  }

  tell(places: readonly string[]): void {
    for (const listener of this.#listeners) listener(places);
  }

  close(): void {
    clearInterval(this.#look);
    this.#listeners.clear();
  }

  #begin(): void {
    this.#version = this.#readVersion();
    this.#look = setInterval(() => this.#lookOutside(), LOOK).unref();
  }

  #lookOutside(): void {
    const version = this.#readVersion();
    if (version === this.#version) return;
    this.#version = version;
    this.tell([]);
  }

  /** Changes when another connection has written, and only then. */
  #readVersion(): unknown {
    return this.#raw.pragma("data_version", { simple: true });
  }
}
