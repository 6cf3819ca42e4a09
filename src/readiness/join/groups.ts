/** Names that mean the same, gathered in sets as they are told. */
export class Groups {
  readonly #sets = new Map<string, Set<string>>();

  /** Those that are the same as this one, itself among them. */
  of(name: string): ReadonlySet<string> {
    return this.#sets.get(name) ?? new Set([name]);
  }

  /**
   * Takes two to be the same.
   *
   * @param mayJoin - asked of both sets before they become one
   * @returns true where that was not known before
   */
  unite(
    one: string,
    other: string,
    mayJoin: (one: ReadonlySet<string>, other: ReadonlySet<string>) => boolean = () => true,
  ): boolean {
    const [first, second] = [this.of(one), this.of(other)];
    if (first.has(other) || !mayJoin(first, second)) return false;
    const both = new Set([...first, ...second]);
    for (const name of both) this.#sets.set(name, both);
    return true;
  }
}
