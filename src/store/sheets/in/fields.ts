/** What a column of a sheet may be. */
export interface SheetField {
  readonly key: string;
  /** As the heading of an exported table has it. */
  readonly label: string;
  /** Other headings that mean it. */
  readonly also: readonly string[];
  /** True where every row must have it. */
  readonly isNeeded?: true;
  /** May be the same for every row instead of a column: a pattern, a place. */
  readonly mayBeFixed?: true;
}

/** Which column is which, and what is the same for every row. */
export interface Mapping {
  /** Key of a field by column, from 0; undefined for a column that is left out. */
  readonly columns: readonly (string | undefined)[];
  readonly fixed: Readonly<Record<string, string>>;
}

/** Guesses by the headings: each field once, from the left. What is not plain is left out, for a person to say. */
export function guessMapping(heads: readonly string[], fields: readonly SheetField[]): Mapping {
  const taken = new Set<string>();
  const columns = heads.map((head) => {
    const field = fields.find((one) => !taken.has(one.key) && namesOf(one).has(plainHead(head)));
    if (field) taken.add(field.key);
    return field?.key;
  });
  return { columns, fixed: {} };
}

function namesOf({ label, also }: SheetField): ReadonlySet<string> {
  return new Set([label, ...also].map(plainHead));
}

/** A heading without case, units in brackets, dots and blanks. */
function plainHead(head: string): string {
  return head
    .toLowerCase()
    .replace(/\([^)]*\)/g, "")
    .replace(/[^\p{Letter}\p{Number}]+/gu, " ")
    .trim();
}
