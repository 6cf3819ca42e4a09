import type { Lookup } from "../lookup.ts";
import type { PartNeed, WorkTask } from "./work-line.ts";

/**
 * What an opening uses: the items that are renewed, and those that every opening uses up. What a finding will take is not
 * known before it is looked at.
 *
 * @param tasks - what the opening is to settle; none where it is only planned, or comes ahead of time
 */
export function partsFor({ pattern }: Lookup, tasks: readonly WorkTask[]): readonly PartNeed[] {
  const renewed = new Set(tasks.filter(({ sort }) => sort === "renew").map(({ item }) => item));
  return pattern.items
    .filter(({ id, life }) => renewed.has(id) || life.kind === "single-use")
    .map(({ id, name, part, quantity }) => ({
      item: id,
      name,
      ...(part !== undefined && { part }),
      count: Math.max(1, quantity),
    }));
}
