import type { UnitSystem } from "#base";
import { useSyncExternalStore } from "react";

export type Palette = "day" | "night";

/** How this screen is to look and read. Kept apart from the log: it is nobody's business but the reader's. */
export interface Preferences {
  readonly palette: Palette;
  /** How much of the night palette's light gets through, 0.15 to 1. */
  readonly nightLevel: number;
  readonly units: UnitSystem;
}

const KEY = "drykeel.preferences";
const FIRST: Preferences = { palette: "day", nightLevel: 0.75, units: "metric" };
export const NIGHT_LEVELS = { least: 0.15, most: 1, step: 0.15 } as const;

/** Reads, keeps and announces preferences; one per page load. */
export class PreferenceKeeper {
  #now: Preferences;
  readonly #hearers = new Set<() => void>();
  readonly #storage: Pick<Storage, "getItem" | "setItem">;

  constructor(storage: Pick<Storage, "getItem" | "setItem">) {
    this.#storage = storage;
    this.#now = readPreferences(storage.getItem(KEY));
  }

  readonly now = (): Preferences => this.#now;

  readonly hear = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  change(part: Partial<Preferences>): void {
    this.#now = { ...this.#now, ...part };
    this.#storage.setItem(KEY, JSON.stringify(this.#now));
    for (const hearer of this.#hearers) hearer();
  }
}

/** What was kept, field by field; a field that makes no sense falls back to its first value. */
export function readPreferences(text: string | null): Preferences {
  const kept = parseObject(text);
  const level = Number(kept["nightLevel"]);
  return {
    palette: kept["palette"] === "night" ? "night" : FIRST.palette,
    units: kept["units"] === "us" ? "us" : FIRST.units,
    nightLevel: level >= NIGHT_LEVELS.least && level <= NIGHT_LEVELS.most ? level : FIRST.nightLevel,
  };
}

function parseObject(text: string | null): Record<string, unknown> {
  if (text === null) return {};
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  } catch (cause) {
    if (cause instanceof SyntaxError) return {};
    throw cause;
  }
}

export const preferences = new PreferenceKeeper(globalThis.localStorage ?? memoryStorage());

/** Today's preferences; the component draws again when they change. */
export function usePreferences(): Preferences {
  return useSyncExternalStore(preferences.hear, preferences.now, preferences.now);
}

function memoryStorage(): Pick<Storage, "getItem" | "setItem"> {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}
