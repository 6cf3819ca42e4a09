import type { KitState, Turnaround } from "../state.ts";

/** Every opening of a kit that counts, in the order they were closed, the one that is on last; those set aside are left out. */
export function openingsOf({
  turnarounds,
  turnaround,
}: Pick<KitState, "turnarounds" | "turnaround">): readonly Turnaround[] {
  const closed = turnarounds.filter((one) => one.closed?.how !== "set-aside");
  return turnaround ? [...closed, turnaround] : closed;
}
