import { useWatched, Watched } from "#web/watched/index.ts";

/** A pump running now, and when its tank is to be filled again. */
export interface Refuel {
  readonly kit: string;
  readonly name: string;
  /** RFC 3339: when it was started on a full tank. */
  readonly started: string;
  /** Running time to the refuelling [s]. */
  readonly seconds: number;
  /** The alarm was answered; the reminder stays until it is stopped or begun again. */
  readonly isAnswered: boolean;
}

const KEY = "drykeel.refuel";

type Shelf = Pick<Storage, "getItem" | "setItem">;

/**
 * Keeps the refuel reminders of this device: instants on the wall clock, so that a reload, a locked phone or a dead
 * battery changes nothing. Nobody else's business, so not in the log.
 */
export class RefuelKeeper {
  readonly #now: Watched<readonly Refuel[]>;
  readonly #shelf: Shelf;

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#now = new Watched(readRefuels(shelf.getItem(KEY)));
  }

  readonly now = (): readonly Refuel[] => this.#now.read();

  readonly hear = (hearer: () => void): (() => void) => this.#now.hear(hearer);

  /** Begins a reminder, in place of one the kit had. */
  start(refuel: Omit<Refuel, "isAnswered">): void {
    this.#keep([...this.#others(refuel.kit), { ...refuel, isAnswered: false }]);
  }

  /** Reads the shelf again: another window of this device has written on it. */
  reread(): void {
    this.#now.set(readRefuels(this.#shelf.getItem(KEY)));
  }

  answer(kit: string): void {
    this.#keep(this.now().map((one) => (one.kit === kit ? { ...one, isAnswered: true } : one)));
  }

  stop(kit: string): void {
    this.#keep(this.#others(kit));
  }

  #others(kit: string): readonly Refuel[] {
    return this.now().filter((one) => one.kit !== kit);
  }

  #keep(refuels: readonly Refuel[]): void {
    this.#shelf.setItem(KEY, JSON.stringify(refuels));
    this.#now.set(refuels);
  }
}

/** Reminders as kept; one that cannot be read is left out. */
export function readRefuels(text: string | null): readonly Refuel[] {
  if (text === null) return [];
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) ? kept.filter(isRefuel) : [];
  } catch (cause) {
    if (cause instanceof SyntaxError) return [];
    throw cause;
  }
}

function isRefuel(value: unknown): value is Refuel {
  const { kit, name, started, seconds, isAnswered } = (value ?? {}) as Partial<Record<keyof Refuel, unknown>>;
  const isTimed = typeof started === "string" && Number.isFinite(Date.parse(started)) && typeof seconds === "number";
  return typeof kit === "string" && typeof name === "string" && isTimed && typeof isAnswered === "boolean";
}

/** When a pump is to be refuelled [ms since 1970-01-01 UTC]. */
export function refuelInstant({ started, seconds }: Pick<Refuel, "started" | "seconds">): number {
  return Date.parse(started) + 1000 * seconds;
}

/** The reminder that calls now: due and not answered, the longest due first. */
export function callingRefuel(refuels: readonly Refuel[], now: number): Refuel | undefined {
  return refuels
    .filter((one) => !one.isAnswered && refuelInstant(one) <= now)
    .sort((one, other) => refuelInstant(one) - refuelInstant(other))[0];
}

export const refuels = new RefuelKeeper(globalThis.localStorage ?? nowhere());
globalThis.window?.addEventListener("storage", ({ key }) => key === KEY && refuels.reread());

/** The reminders of this device; the component draws again when they change. */
export function useRefuels(): readonly Refuel[] {
  return useWatched({ hear: refuels.hear, read: refuels.now });
}

function nowhere(): Shelf {
  return { getItem: () => null, setItem: () => undefined };
}
