import type { Difference, Mark } from "../state.ts";

type About = Omit<Difference, "entries" | "marks">;

interface Open {
  readonly about: About;
  /** By entry, in the order in which they came. */
  readonly marks: Map<string, Mark>;
}

/** The differences of a kit while lines are folded into it: by what they are about and by the entries in them. */
export class Differences {
  /** The one that last changed comes last. */
  readonly #open = new Map<string, Open>();
  readonly #keysOf = new Map<string, Set<string>>();
  #isQuiet = false;
  #isChanged = false;

  constructor(before: readonly Difference[]) {
    for (const { entries: _, marks, ...about } of before) this.#put(keyOf(about), about, marks);
  }

  /** Notes a difference; a third opinion on the same thing joins the first two. */
  note(about: About, marks: readonly Mark[]): void {
    if (this.#isQuiet) return;
    this.#isChanged = true;
    this.#put(keyOf(about), about, marks);
  }

  /** Does something that settles a difference, and makes none. */
  quietly(act: () => void): void {
    this.#isQuiet = true;
    act();
    this.#isQuiet = false;
  }

  /** Takes out those that one entry settles, of which every entry was looked at. */
  take(stands: string, looked: ReadonlySet<string>): readonly Difference[] {
    const keys = new Set(this.#keysOf.get(stands));
    const isWhole = ({ marks }: Open) => marks.size <= looked.size && [...marks.keys()].every((id) => looked.has(id));
    const whole = [...keys].filter((key) => isWhole(this.#open.get(key)!));
    if (whole.length === 0) return [];
    this.#isChanged = true;
    return this.#inOrder(whole).map((key) => this.#remove(key));
  }

  /** All of them where any changed since this was last asked. */
  changed(): readonly Difference[] | undefined {
    if (!this.#isChanged) return undefined;
    this.#isChanged = false;
    return [...this.#open.values()].map(written);
  }

  #inOrder(keys: readonly string[]): readonly string[] {
    if (keys.length === 1) return keys;
    const wanted = new Set(keys);
    return [...this.#open.keys()].filter((key) => wanted.has(key));
  }

  #put(key: string, about: About, marks: readonly Mark[]): void {
    const all = this.#open.get(key)?.marks ?? new Map<string, Mark>();
    for (const { entry, at, by, device } of marks) {
      all.set(entry, { entry, at, by, device });
      const keys = this.#keysOf.get(entry);
      if (keys) keys.add(key);
      else this.#keysOf.set(entry, new Set([key]));
    }
    this.#open.delete(key);
    this.#open.set(key, { about, marks: all });
  }

  #remove(key: string): Difference {
    const open = this.#open.get(key)!;
    this.#open.delete(key);
    for (const entry of open.marks.keys()) this.#keysOf.get(entry)?.delete(key);
    return written(open);
  }
}

function written({ about, marks }: Open): Difference {
  return { ...about, entries: [...marks.keys()], marks: [...marks.values()] };
}

function keyOf({ what, turnaround, step, check, item }: About): string {
  return JSON.stringify([what, turnaround, step, check, item].map((one) => (one === undefined ? "" : `=${one}`)));
}
