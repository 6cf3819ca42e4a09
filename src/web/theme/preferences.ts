import type { UnitSystem } from "#base";
import { isSpeech, WHOLE_LANGUAGES, type Speech } from "#words";
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
  /** Of the person who sits here; before anyone does, of who sat here last, else the browser's. */
  readonly language: Speech;
}

/** Where a device keeps how its screen looks. */
export const LOOKS_KEY = "drykeel.looks";
const UNITS_PREFIX = "drykeel.units.";
const LANGUAGE_KEY = "drykeel.language";
const FIRST = { palette: "day", nightLevel: 0.75, units: "metric" } as const;
type Drawer = Pick<Storage, "getItem" | "setItem">;
export const NIGHT_LEVELS = { least: 0.15, most: 1, step: 0.15 } as const;

/** Reads, keeps and announces preferences; one per page load. */
export class PreferenceKeeper {
  readonly #now: Watched<Preferences>;
  #person: string | undefined;
  readonly #storage: Drawer;

  constructor(storage: Drawer) {
    this.#storage = storage;
    const language = readLanguage(storage, undefined);
    this.#now = new Watched({ ...readLooks(storage.getItem(LOOKS_KEY)), units: FIRST.units, language });
  }

  readonly now = (): Preferences => this.#now.read();

  readonly hear = (hearer: () => void): (() => void) => this.#now.hear(hearer);

  /** Another person sits here now, or nobody: their units and language, and the device's colours as they were. */
  seat(person: string | undefined): void {
    this.#person = person;
    const kept = person === undefined ? null : this.#storage.getItem(UNITS_PREFIX + person);
    const language = readLanguage(this.#storage, person);
    this.#now.set({ ...this.now(), units: kept === "us" ? "us" : FIRST.units, language });
  }

  change(part: Partial<Preferences>): void {
    const { units, language, ...looks } = { ...this.now(), ...part };
    this.#storage.setItem(LOOKS_KEY, JSON.stringify(looks));
    if (this.#person !== undefined) this.#storage.setItem(UNITS_PREFIX + this.#person, units);
    for (const key of [LANGUAGE_KEY, languageKeyOf(this.#person)]) this.#storage.setItem(key, language);
    this.#now.set({ ...looks, units, language });
  }
}

function languageKeyOf(person: string | undefined): string {
  return person === undefined ? LANGUAGE_KEY : `${LANGUAGE_KEY}.${person}`;
}

/** The person's, else the last one's, else the browser's where every screen speaks it, else the first. */
function readLanguage(storage: Drawer, person: string | undefined): Speech {
  const kept = storage.getItem(languageKeyOf(person)) ?? storage.getItem(LANGUAGE_KEY);
  if (isSpeech(kept)) return kept;
  const asked = globalThis.navigator?.language.slice(0, 2);
  return WHOLE_LANGUAGES.find((language) => language === asked) ?? "en";
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
