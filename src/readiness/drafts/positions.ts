/** Where each of a list stands by its id, for lists that only grow at their end: looked up, never searched. */
export class Positions {
  readonly #at = new Map<string, number>();

  constructor(ids: readonly string[]) {
    ids.forEach((id, at) => this.#at.set(id, at));
  }

  of(id: string): number | undefined {
    return this.#at.get(id);
  }

  note(id: string, at: number): void {
    this.#at.set(id, at);
  }
}
