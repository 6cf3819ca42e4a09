import type { Entry } from "#log";
import type { CasualtyBodies } from "../kinds/kinds.ts";

/** A line as it stands on the sheet that all make, and the sheet that it was written on. */
export interface Line {
  readonly entry: Entry;
  readonly sheet: string;
}

/** Pumps that were set on one sheet only, and which of them were last set to run, while lines are folded in. */
export class OwnPumps {
  /** By pump, the sheet that set it; undefined where several did. */
  readonly #setter = new Map<string, string | undefined>();
  readonly #running = new Map<string, Set<string>>();

  /** @param lines - all that there are, also those that are folded in later */
  constructor(lines: readonly Line[]) {
    for (const { entry, sheet } of lines) {
      if (entry.kind !== "pump-set") continue;
      const { pump } = entry.body as CasualtyBodies["pump-set"];
      const isOther = this.#setter.has(pump) && this.#setter.get(pump) !== sheet;
      this.#setter.set(pump, isOther ? undefined : sheet);
    }
  }

  /** A line sets a pump. */
  note({ entry, sheet }: Line): void {
    const { pump, running } = entry.body as CasualtyBodies["pump-set"];
    if (this.#setter.get(pump) !== sheet) return;
    const live = this.#running.get(sheet) ?? new Set();
    this.#running.set(sheet, live);
    if (running) live.add(pump);
    else live.delete(pump);
  }

  /** Those of a sheet that run, but for those left running; they are not told a second time. */
  takeRunning(sheet: string, left: readonly string[] = []): readonly string[] {
    const live = this.#running.get(sheet) ?? new Set();
    const kept = left.filter((pump) => live.has(pump));
    this.#running.set(sheet, new Set(kept));
    for (const pump of kept) live.delete(pump);
    return [...live];
  }
}
