import type { DrawnUse } from "../state.ts";

/** Parts taken off shelves for a kit, by line and by what each was taken for: looked up, never searched. */
export class DrawnUses {
  readonly #byLine = new Map<string, DrawnUse>();
  readonly #byWork = new Map<string, DrawnUse[]>();

  constructor(uses: readonly DrawnUse[]) {
    for (const use of uses) this.add(use);
  }

  add(use: DrawnUse): void {
    this.#byLine.set(use.entry, use);
    if (use.turnaround === undefined) return;
    const work = nameOf(use.turnaround, use.item);
    const others = this.#byWork.get(work);
    if (others) others.push(use);
    else this.#byWork.set(work, [use]);
  }

  remove(use: DrawnUse): void {
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
