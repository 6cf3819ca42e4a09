import { nth } from "#base";
import { isCovered } from "./crews.ts";
import type { Grid, GridKit } from "./grid.ts";
import type { Shares } from "./work-sharing.ts";

/** People of one opening, by number. */
export interface Named {
  /** Who shares the work. */
  readonly by: readonly number[];
  /** Who is there too: to see done what somebody may not do alone, or to lift. */
  readonly beside: readonly number[];
  /** Hands that are wanted at once and that nobody there has. */
  readonly lacking: number;
}

/**
 * Who is named for an opening: those who share its work; of the others there, who sees it done, and hands to lift.
 * @param load - by person: share of their hours of the year that is given out; who has least comes first
 */
export function nameOpening(
  grid: Grid,
  week: number,
  kit: GridKit,
  { shares, load }: { readonly shares: Shares; readonly load: readonly number[] },
): Named {
  const there = nth(grid.there, week).toSorted((one, other) => nth(load, one) - nth(load, other) || one - other);
  const order = there.filter((one) => nth(nth(grid.minutes, one), week) > 0);
  const by = [...shares.keys()].toSorted((one, other) => one - other);
  const named = new Set(by);
  for (const person of by) seen(kit, person, named, order);
  const others = [...order.filter((one) => kit.crew.alone.includes(one)), ...order, ...there];
  for (const person of others) if (named.size < kit.hands) named.add(person);
  const beside = [...named].filter((one) => !by.includes(one)).toSorted((one, other) => one - other);
  return { by, beside, lacking: Math.max(0, kit.hands - named.size) };
}

/** Adds who sees done what this person may not do alone. */
function seen({ crew }: GridKit, person: number, named: Set<number>, order: readonly number[]): void {
  if (isCovered(crew, person, (one) => named.has(one))) return;
  for (const able of nth(crew.seers, person)) {
    const second = able.some((one) => named.has(one)) ? undefined : order.find((one) => able.includes(one));
    if (second !== undefined) named.add(second);
  }
}
