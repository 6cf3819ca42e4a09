/**
 * Lets each person have one costly thing under way at a time: whoever asks for many waits for their own, and nobody else
 * does.
 */
export class Turns {
  readonly #last = new Map<string, Promise<unknown>>();

  /** Does the work when everything that the same person asked for before is done. */
  take<Value>(person: string, work: () => Promise<Value>): Promise<Value> {
    const before = this.#last.get(person) ?? Promise.resolve();
    const mine = before.then(work, work);
    const settled = mine.catch(() => undefined);
    this.#last.set(person, settled);
    void settled.then(() => this.#last.get(person) === settled && this.#last.delete(person));
    return mine;
  }
}
