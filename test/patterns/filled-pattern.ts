import { emptyPattern } from "#kit";

/** For tests: a pattern begun from nothing, each figure told. */
export function filledPattern(id: string): string {
  return emptyPattern(id)
    .replace('mass: ""', "mass: 20 kg")
    .replace('lifters: ""', "lifters: 1")
    .replace('muster: ""', "muster: 1 month")
    .replace('turnaround: ""', "turnaround: 12 months")
    .replaceAll('minutes: ""', "minutes: 2");
}
