/** Where each of a list stands by its id, for lists that only grow at their end: looked up, never searched. */
export class Positions {
  /** Most lists of most kits stay empty. */
  #at: Map<string, number> | undefined;

  constructor(ids: readonly string[]) {
    ids.forEach((id, at) => this.note(id, at));
  }

  of(id: string): number | undefined {
    return this.#at?.get(id);
  }

  note(id: string, at: number): void {
    this.#at ??= new Map();
    this.#at.set(id, at);
  }
}
