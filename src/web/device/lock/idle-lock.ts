import { Watched } from "#web/watched/index.ts";

/** After how many minutes without a touch a device with a lock may lock itself; 0: never. */
export const IDLE_MINUTES = [5, 15, 60, 0] as const;
export type IdleMinutes = (typeof IDLE_MINUTES)[number];

/** How a device with a lock locks itself. */
export interface IdleChoice {
  readonly minutes: IdleMinutes;
  /** Also while a casualty sheet is open, or a clock of a turnaround runs. */
  readonly always: boolean;
}

/** A quarter of an hour, as NIST SP 800-63B (2017, section 4.3.3) has it at its highest level; FROM MEMORY. */
export const FIRST_IDLE: IdleChoice = { minutes: 15, always: false };

/** What keeps an open device open. */
export interface InUse {
  /** When it was last touched, in any window [ms]. */
  readonly touched: number;
  readonly isSheetOpen: boolean;
  /** When each running clock of a turnaround reaches its limit [ms]: until then somebody waits for it. */
  readonly clocks: readonly number[];
}

/** True where a device has not been used for so long that it locks itself. @param now - [ms] */
export function isLeftIdle({ minutes, always }: IdleChoice, inUse: InUse, now: number): boolean {
  if (minutes === 0 || (inUse.isSheetOpen && !always)) return false;
  const waited = always ? [] : inUse.clocks;
  return now - Math.max(inUse.touched, ...waited) >= minutes * 60_000;
}

/** True where a device would lock itself later than before, or not at all: only who can open it may choose that. */
export function isLooser(before: IdleChoice, after: IdleChoice): boolean {
  const isLater = (after.minutes || Infinity) > (before.minutes || Infinity);
  return isLater || (after.minutes !== 0 && before.always && !after.always);
}

type Shelf = Pick<Storage, "getItem" | "setItem">;

const CHOICE = "drykeel.lock-idle";
const TOUCHED = "drykeel.touched";
/** A touch is written down no more often than this [ms]. */
const OFTEN = 5000;

/** What this device keeps about being used: its choice, and when any of its windows was last touched. */
export class IdleShelf extends Watched<IdleChoice> {
  readonly #shelf: Shelf;

  constructor(shelf: Shelf) {
    super(readChoice(shelf.getItem(CHOICE)));
    this.#shelf = shelf;
    globalThis.window?.addEventListener("storage", ({ key }) => {
      if (key === CHOICE) this.set(readChoice(shelf.getItem(CHOICE)));
    });
  }

  choose(part: Partial<IdleChoice>): void {
    const choice = { ...this.read(), ...part };
    this.#shelf.setItem(CHOICE, JSON.stringify(choice));
    this.set(choice);
  }

  touch(now: number): void {
    if (now - this.touched(now) >= OFTEN) this.#shelf.setItem(TOUCHED, String(now));
  }

  /** When it was last touched [ms]. A clock set back since counts from now; so does a device never touched. */
  touched(now: number): number {
    const kept = Number(this.#shelf.getItem(TOUCHED) ?? Number.NaN);
    if (kept <= now) return kept;
    this.#shelf.setItem(TOUCHED, String(now));
    return now;
  }
}

/** What was kept, field by field; a field that makes no sense falls back to its first value. */
function readChoice(text: string | null): IdleChoice {
  const { minutes, always } = parsed(text);
  const known = IDLE_MINUTES.find((one) => one === minutes);
  return { minutes: known ?? FIRST_IDLE.minutes, always: always === true };
}

function parsed(text: string | null): { readonly minutes?: unknown; readonly always?: unknown } {
  try {
    const kept: unknown = JSON.parse(text ?? "null");
    return typeof kept === "object" && kept !== null ? kept : {};
  } catch (cause) {
    if (cause instanceof SyntaxError) return {};
    throw cause;
  }
}

/** That of this device. */
export const idleShelf = new IdleShelf(globalThis.localStorage ?? { getItem: () => null, setItem: () => undefined });
