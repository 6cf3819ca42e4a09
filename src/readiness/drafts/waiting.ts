import type { Entry, History } from "#log";

/** Remedies and proofs that sorted before their finding, by the finding they wait for. */
export class Waiting {
  /** Every one in its order, with the finding it waits for. */
  readonly #all = new Map<string, string | undefined>();
  readonly #for = new Map<string, Entry[]>();
  #isChanged = false;

  constructor(ids: readonly string[], history: History) {
    for (const id of ids) {
      const entry = history.entry(id);
      if (entry === undefined) this.#all.set(id, undefined);
      else this.#note(entry);
    }
  }

  get size(): number {
    return this.#all.size;
  }

  add(entry: Entry): void {
    this.#isChanged = true;
    this.#note(entry);
  }

  /** Takes out those of one finding, in their order. */
  take(finding: string): readonly Entry[] {
    const due = this.#for.get(finding) ?? [];
    this.#for.delete(finding);
    for (const { id } of due) this.#all.delete(id);
    this.#isChanged ||= due.length > 0;
    return due;
  }

  /** Ids of all where any changed since this was last asked. */
  changed(): readonly string[] | undefined {
    if (!this.#isChanged) return undefined;
    this.#isChanged = false;
    return [...this.#all.keys()];
  }

  #note(entry: Entry): void {
    const { finding } = entry.body as { readonly finding: string };
    this.#all.set(entry.id, finding);
    const group = this.#for.get(finding);
    if (group) group.push(entry);
    else this.#for.set(finding, [entry]);
  }
}
