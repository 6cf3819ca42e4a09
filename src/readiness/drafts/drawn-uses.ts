import type { DrawnUse } from "../state.ts";

/** Parts taken off shelves for a kit, in order, by line and by what each was taken for: looked up, never searched. */
export class DrawnUses {
  /** Each with its place in the order. */
  readonly #uses = new Map<DrawnUse, number>();
  #next = 0;
  #isChanged = false;
  readonly #byLine = new Map<string, DrawnUse>();
  readonly #byWork = new Map<string, DrawnUse[]>();

  constructor(uses: readonly DrawnUse[]) {
    for (const use of uses) this.add(use);
    this.#isChanged = false;
  }

  /** True where none was ever taken. */
  get isNone(): boolean {
    return this.#next === 0;
  }

  /** All of them, the first one first, where any came or went since this was last asked. */
  takeChanged(): DrawnUse[] | undefined {
    if (!this.#isChanged) return undefined;
    this.#isChanged = false;
    return [...this.#uses.keys()];
  }

  /** The one of these that was taken last. */
  lastOf(uses: readonly DrawnUse[]): DrawnUse | undefined {
    const places = uses.map((use) => this.#uses.get(use) ?? -1);
    return uses[places.indexOf(Math.max(...places))];
  }

  add(use: DrawnUse): void {
    this.#isChanged = true;
    this.#uses.set(use, this.#next++);
    this.#byLine.set(use.entry, use);
    if (use.turnaround === undefined) return;
    const work = nameOf(use.turnaround, use.item);
    const others = this.#byWork.get(work);
    if (others) others.push(use);
    else this.#byWork.set(work, [use]);
  }

  remove(use: DrawnUse): void {
    this.#isChanged = true;
    this.#uses.delete(use);
    this.#byLine.delete(use.entry);
    const others = this.#byWork.get(nameOf(use.turnaround ?? "", use.item)) ?? [];
    const at = others.lastIndexOf(use);
    if (at >= 0) others.splice(at, 1);
  }

  /** What this line took already. */
  byLine(entry: string): DrawnUse | undefined {
    return this.#byLine.get(entry);
  }

  /** What was taken for this item in this turnaround, the first one first. */
  byWork(turnaround: string, item: string): readonly DrawnUse[] {
    return this.#byWork.get(nameOf(turnaround, item)) ?? [];
  }
}

function nameOf(turnaround: string, item: string): string {
  return JSON.stringify([turnaround, item]);
}
