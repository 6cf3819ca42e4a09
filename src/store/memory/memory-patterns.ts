import type { IssuedPattern, LaidOutDraft, PatternShelf } from "#station";

/** Issued patterns and drafts in memory: for tests. */
export class MemoryPatterns implements PatternShelf {
  readonly #issued = new Map<string, IssuedPattern>();
  readonly #drafts = new Map<string, LaidOutDraft>();

  async issue(pattern: IssuedPattern): Promise<boolean> {
    const key = `${pattern.id}@${pattern.version}`;
    if (this.#issued.has(key)) return false;
    this.#issued.set(key, structuredClone(pattern));
    return true;
  }

  async issued(): Promise<readonly Pick<IssuedPattern, "id" | "version">[]> {
    return [...this.#issued.values()]
      .map(({ id, version }) => ({ id, version }))
      .toSorted((one, other) => (one.id === other.id ? one.version - other.version : one.id < other.id ? -1 : 1));
  }

  async issuedPattern(id: string, version: number): Promise<IssuedPattern | undefined> {
    return structuredClone(this.#issued.get(`${id}@${version}`));
  }

  async layOut(draft: LaidOutDraft): Promise<void> {
    this.#drafts.set(draft.by, structuredClone(draft));
  }

  async laidOut(): Promise<readonly LaidOutDraft[]> {
    return structuredClone([...this.#drafts.values()].toSorted((one, other) => (one.by < other.by ? -1 : 1)));
  }

  async takeIn(by: string): Promise<void> {
    this.#drafts.delete(by);
  }
}
