interface Group {
  readonly names: Set<string>;
  /** Of which no two in a group may be alike. */
  readonly marks: Set<string>;
}

/** Names that mean the same, gathered in sets as they are told. */
export class Groups {
  readonly #groups = new Map<string, Group>();
  readonly #markOf: ((name: string) => string) | undefined;

  /** @param markOf - names with the same mark never become one */
  constructor(markOf?: (name: string) => string) {
    this.#markOf = markOf;
  }

  /** Those that are the same as this one, itself among them. */
  of(name: string): ReadonlySet<string> {
    return this.#groups.get(name)?.names ?? new Set([name]);
  }

  /**
   * Takes two to be the same. The smaller set goes into the greater, so that no name moves more often than the sets can
   * double.
   *
   * @returns true where that was not known before
   */
  unite(one: string, other: string): boolean {
    const [first, second] = [this.#own(one), this.#own(other)];
    const [few, many] = first.names.size < second.names.size ? [first, second] : [second, first];
    if (first === second || !mayJoin(few, many)) return false;
    for (const mark of few.marks) many.marks.add(mark);
    for (const name of few.names) {
      many.names.add(name);
      this.#groups.set(name, many);
    }
    return true;
  }

  #own(name: string): Group {
    const known = this.#groups.get(name);
    if (known !== undefined) return known;
    const group = { names: new Set([name]), marks: new Set(this.#markOf && [this.#markOf(name)]) };
    this.#groups.set(name, group);
    return group;
  }
}

function mayJoin(few: Group, many: Group): boolean {
  for (const mark of few.marks) if (many.marks.has(mark)) return false;
  return true;
}
