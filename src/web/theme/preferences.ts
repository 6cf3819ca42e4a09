import type { UnitSystem } from "#base";
import { useWatched, Watched } from "../watched/index.ts";

export type Palette = "day" | "night";

/** How this screen is to look. It stays with the device, whoever sits at it. */
export interface Looks {
  readonly palette: Palette;
  /** How much of the night palette's light gets through, 0.15 to 1. */
  readonly nightLevel: number;
}

/** How this screen is to look and read. Kept apart from the log: it is nobody's business but the reader's. */
export interface Preferences extends Looks {
  /** Of the person who sits here; metric before anyone does. */
  readonly units: UnitSystem;
}

/** Where a device keeps how its screen looks. */
export const LOOKS_KEY = "drykeel.looks";
const UNITS_PREFIX = "drykeel.units.";
const FIRST: Preferences = { palette: "day", nightLevel: 0.75, units: "metric" };
type Drawer = Pick<Storage, "getItem" | "setItem">;
export const NIGHT_LEVELS = { least: 0.15, most: 1, step: 0.15 } as const;

/** Reads, keeps and announces preferences; one per page load. */
export class PreferenceKeeper {
  readonly #now: Watched<Preferences>;
  #person: string | undefined;
  readonly #storage: Drawer;

  constructor(storage: Drawer) {
    this.#storage = storage;
    this.#now = new Watched({ ...readLooks(storage.getItem(LOOKS_KEY)), units: FIRST.units });
  }

  readonly now = (): Preferences => this.#now.read();

  readonly hear = (hearer: () => void): (() => void) => this.#now.hear(hearer);

  /** Another person sits here now, or nobody: their units, and the device's colours as they were. */
  seat(person: string | undefined): void {
    this.#person = person;
    const kept = person === undefined ? null : this.#storage.getItem(UNITS_PREFIX + person);
    this.#now.set({ ...this.now(), units: kept === "us" ? "us" : FIRST.units });
  }

  change(part: Partial<Preferences>): void {
    const { units, ...looks } = { ...this.now(), ...part };
    this.#storage.setItem(LOOKS_KEY, JSON.stringify(looks));
    if (this.#person !== undefined) this.#storage.setItem(UNITS_PREFIX + this.#person, units);
    this.#now.set({ ...looks, units });
  }
}

/** What was kept, field by field; a field that makes no sense falls back to its first value. */
export function readLooks(text: string | null): Looks {
  const kept = parseObject(text);
  const level = Number(kept["nightLevel"]);
  return {
    palette: kept["palette"] === "night" ? "night" : FIRST.palette,
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
  return useWatched({ hear: preferences.hear, read: preferences.now });
}

function memoryStorage(): Drawer {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}
