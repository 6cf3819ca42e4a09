import type { PartShelf } from "#readiness";

/**
 * How many are there by the record, where more are to be taken than that; undefined where there are enough.
 *
 * @param lot - as it is marked; empty: of none that is marked; undefined: whatever there is
 */
export function fewerThere(
  { lots }: Pick<PartShelf, "lots">,
  lot: string | undefined,
  count: number | undefined,
): number | undefined {
  const asked = lots.filter((one) => lot === undefined || (one.lot ?? "") === lot);
  const there = Math.max(
    0,
    asked.reduce((sum, one) => sum + one.count, 0),
  );
  return count !== undefined && count > there ? there : undefined;
}
