import { Watched } from "#web/watched/index.ts";

/** Who would call, were the device open. */
export type Caller = "casualty" | "turnaround";

type Shelf = Pick<Storage, "getItem" | "setItem" | "removeItem">;
type Kept = Readonly<Partial<Record<Caller, readonly number[]>>>;

const NAME = "drykeel.sealed-calls";
const NONE: Kept = {};

/**
 * When something calls on this device [ms], and nothing else of it: written down in the clear while a lock is open, so
 * that it still calls once the device is locked.
 */
export class SealedCalls {
  readonly #shelf: Shelf;
  readonly #kept: Watched<Kept>;

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#kept = new Watched(readKept(shelf.getItem(NAME)));
  }

  readonly hear = (hearer: () => void): (() => void) => this.#kept.hear(hearer);

  readonly read = (): Kept => this.#kept.read();

  /** From now on this caller calls at these instants [ms], and at no other. */
  note(caller: Caller, instants: readonly number[]): void {
    this.#keep({ ...readKept(this.#shelf.getItem(NAME)), [caller]: instants });
  }

  /** What calls now is answered; what comes later calls. @param now - [ms] */
  answer(now: number): void {
    const kept = Object.entries(this.read());
    this.#keep(Object.fromEntries(kept.map(([caller, all]) => [caller, all.filter((at) => at > now)])));
  }

  /** Nothing calls any more: the device was opened, and calls by itself. */
  forget(): void {
    this.#shelf.removeItem(NAME);
    this.#kept.set(NONE);
  }

  #keep(kept: Kept): void {
    this.#shelf.setItem(NAME, JSON.stringify(kept));
    this.#kept.set(kept);
  }
}

/** Every instant of every caller [ms], the first to come first. */
export function instantsOf(kept: Kept): readonly number[] {
  return Object.values(kept)
    .flat()
    .sort((one, other) => one - other);
}

/** What cannot be read is none. */
function readKept(text: string | null): Kept {
  if (text === null) return NONE;
  try {
    const kept: unknown = JSON.parse(text);
    return typeof kept === "object" && kept !== null ? Object.fromEntries(Object.entries(kept).map(readable)) : NONE;
  } catch (cause) {
    if (cause instanceof SyntaxError) return NONE;
    throw cause;
  }
}

function readable([caller, all]: [string, unknown]): [string, readonly number[]] {
  return [caller, Array.isArray(all) ? all.filter((at): at is number => Number.isFinite(at)) : []];
}

/** Those of this device. */
export const sealedCalls = new SealedCalls(globalThis.localStorage ?? nothingKept());

function nothingKept(): Shelf {
  return { getItem: () => null, setItem: () => undefined, removeItem: () => undefined };
}
