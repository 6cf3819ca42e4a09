import { StoreError } from "#station";

const REMEDY =
  "The database is damaged. Keep it as it is, put the last backup back beside it, and let devices send again.";

/** A table is gone that this database began with. */
export function missingTable(table: string, cause: unknown): StoreError {
  return new StoreError("ST-132", `The table ${table} is missing from the database.`, REMEDY, cause);
}

/**
 * What stands behind a step that failed on tables of before: the row that says it was taken is gone.
 *
 * @param steps - names of all steps in order
 * @param done - names that the database says were taken
 * @returns the same failure in words; undefined where the steps do not account for it
 */
export function missingStep(steps: readonly string[], done: readonly string[], cause: unknown): StoreError | undefined {
  const first = steps.find((name) => !done.includes(name));
  if (first === undefined) return undefined;
  const isGap = steps.slice(steps.indexOf(first)).some((name) => done.includes(name));
  const isThere = /already exists|duplicate column/.test(cause instanceof Error ? cause.message : "");
  if (!isGap && !isThere) return undefined;
  const found = `The row ${first} is missing from the table kysely_migration of the database.`;
  return new StoreError("ST-133", found, REMEDY, cause);
}
