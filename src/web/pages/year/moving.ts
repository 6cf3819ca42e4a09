import type { PlanInput } from "#station";
import type { PlanAnswer } from "./use-plan.ts";

type Opening = Pick<PlanAnswer["openings"][number], "kit" | "week">;

/** Weeks of the plan before and after which a kit's opening cannot be moved: those of its other openings, or the ends. */
export function roomOf(openings: readonly Opening[], { kit, week }: Opening, weeks: number) {
  const own = openings.filter((one) => one.kit === kit && one.week !== week).map((one) => one.week);
  return {
    after: Math.max(-1, ...own.filter((one) => one < week)),
    before: Math.min(weeks, ...own.filter((one) => one > week)),
  };
}

/** What is fixed once an opening has been moved to another week: there, and in no other week between its neighbours. */
export function moved(
  {
    answer,
    input,
  }: { readonly answer: Pick<PlanAnswer, "openings">; readonly input: Pick<PlanInput, "fixed" | "weeks"> },
  opening: Opening,
  to: number,
): PlanInput["fixed"] {
  const { after, before } = roomOf(answer.openings, opening, input.weeks);
  const instead = { from: after + 1, to: before - 1 };
  return [...without(input.fixed, opening), { kit: opening.kit, week: to, instead }];
}

/** What is fixed but for this opening. */
export function without(fixed: PlanInput["fixed"], { kit, week }: Opening): PlanInput["fixed"] {
  return fixed.filter((one) => one.kit !== kit || one.week !== week);
}
