import { addDays } from "#base";
import type { KitState, PlannedWork } from "#readiness";
import type { PlanInput } from "#station";
import type { PlanAnswer } from "./use-plan.ts";

/** A kit's openings as they would be accepted: each keeps the id of the one it takes the place of, in order of weeks. */
export function acceptedOpenings(
  kit: KitState,
  answer: Pick<PlanAnswer, "openings">,
  { start, fixed }: Pick<PlanInput, "start" | "fixed">,
  newId: () => string,
): readonly PlannedWork[] {
  const before = kit.planned?.openings ?? [];
  const own = answer.openings.filter((one) => one.kit === kit.id).toSorted((one, other) => one.week - other.week);
  return own.map(({ week, renews, by, beside = [] }, at) => ({
    id: before[at]?.id ?? newId(),
    week: addDays(start, 7 * week),
    renews,
    by: [...by, ...beside],
    ...(fixed.some((one) => one.kit === kit.id && one.week === week) && { fixed: true }),
  }));
}

/** True where accepting would change what is planned for the kit. */
export function isChanged(kit: KitState, openings: readonly PlannedWork[]): boolean {
  return JSON.stringify(kit.planned?.openings ?? []) !== JSON.stringify(openings);
}
