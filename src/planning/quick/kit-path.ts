import { goodAfter, lengthens, type Grid, type GridKit, type Opening } from "../station/grid.ts";
import { WEEK } from "../station/station.ts";

/** What one more lack of a kind costs; each outweighs all of those after it. */
export const COST = { short: 1e9, late: 1e4, opening: 1, week: 0.004, day: 1e-8 } as const;

/** Clocks with parts that are renewed or left by choice at one opening; further ones are renewed where parts allow. */
const MOST_CHOICES = 3;
/** Ways kept from week to week by the quick plan; more are cut, the cheapest kept. */
export const FEW_WAYS = 80;
/** A way that costs two openings more than another is cut by the quick plan. */
const MARGIN = 2.02;

/** What a kit finds of the others, week by week. */
export interface Prices {
  /** Cost of not being ready. */
  readonly notReady: readonly number[];
  /** Whether people's hours leave room for an opening. */
  readonly hasRoom: readonly boolean[];
  /** Cost of an opening for the level of hours, at most {@link COST.week}. */
  readonly level: readonly number[];
  /** By part: what is left for this kit from each week on. */
  readonly left: readonly (readonly number[])[];
}

/** A way through the weeks so far. */
interface Way {
  readonly cost: number;
  /** Last good week by clock. */
  readonly good: readonly number[];
  /** Last good day by clock, from the start. */
  readonly day: readonly number[];
  /** First week in which it is not out. */
  readonly back: number;
  /** By part, used so far. */
  readonly used: ReadonlyMap<number, number>;
  readonly opened?: { readonly week: number; readonly renews: readonly number[]; readonly before: Way };
}

/**
 * The cheapest openings of one kit, the others standing as they are.
 * @param most - ways kept from week to week; infinite for the very cheapest
 * @source DERIVED: dynamic programming over weeks; ways that another beats in every respect are dropped
 */
export function cheapestPath(grid: Grid, index: number, prices: Prices, most = FEW_WAYS): readonly Opening[] {
  const kit = grid.kits[index]!;
  let ways: readonly Way[] = [firstWay(kit)];
  for (let week = 0; week < grid.weeks; week += 1) {
    const next = choices(atWeek(grid, kit, prices, week), ways);
    ways = unbeaten(
      next.map((way) => passWeek(kit, prices, week, way)),
      most,
    );
  }
  return openingsOf(
    index,
    ways.reduce((best, way) => (way.cost < best.cost ? way : best)),
  );
}

interface At {
  readonly kit: GridKit;
  readonly prices: Prices;
  readonly week: number;
  readonly isFixed: boolean;
  readonly mayOpen: boolean;
  /** Sets of clocks that one opening may renew: all that need no parts, with each choice of those that do. */
  readonly sets: readonly (readonly number[])[];
  readonly lastWeek: number;
}

function atWeek(grid: Grid, kit: GridKit, prices: Prices, week: number): At {
  const isFixed = kit.fixed.includes(week);
  const able = kit.clocks.flatMap((clock, index) => (lengthens(clock, week) ? [index] : []));
  const free = able.filter((index) => kit.clocks[index]!.parts.length === 0);
  const paid = able.filter((index) => kit.clocks[index]!.parts.length > 0);
  const sets = paidSets(paid).map((set) => [...free, ...set].toSorted((one, other) => one - other));
  return {
    kit,
    prices,
    week,
    isFixed,
    mayOpen: isFixed || (kit.mayOpen[week]! && prices.hasRoom[week]! && !blocksFixed(kit, week)),
    sets: sets.filter((set) => isFixed || set.length > 0),
    lastWeek: grid.weeks - 1,
  };
}

function firstWay(kit: GridKit): Way {
  return {
    cost: 0,
    good: kit.clocks.map((clock) => clock.good),
    day: kit.clocks.map((clock) => clock.lastDay),
    back: 0,
    used: new Map(),
  };
}

/** Ways from which to open: where no clock takes parts all end alike, and the cheapest will do. */
function openable(at: At, ways: readonly Way[]): readonly Way[] {
  if (!at.mayOpen) return [];
  const able = at.isFixed ? ways : ways.filter((way) => way.back <= at.week);
  const useful = at.isFixed ? able : able.filter((way) => way.good.some((good) => good < at.lastWeek));
  if (useful.length === 0 || at.kit.clocks.some((clock) => clock.parts.length > 0 || !lengthens(clock, at.week)))
    return useful;
  return [useful.reduce((best, way) => (way.cost < best.cost ? way : best))];
}

function choices(at: At, ways: readonly Way[]): readonly Way[] {
  const opened = openable(at, ways).flatMap((way) =>
    at.sets.filter((set) => hasParts(at.kit, set, at.prices, at.week, way.used)).map((set) => open(at, way, set)),
  );
  return at.isFixed ? opened : [...ways, ...opened];
}

/** A kit is not opened so late that it would still be out when an opening is fixed. */
function blocksFixed(kit: GridKit, week: number): boolean {
  return kit.fixed.some((fixed) => week < fixed && fixed < week + kit.weeksOut);
}

function paidSets(paid: readonly number[]): number[][] {
  const chosen = paid.slice(0, MOST_CHOICES);
  const sets = chosen.reduce<number[][]>((found, index) => [...found, ...found.map((set) => [...set, index])], [[]]);
  return paid.length > MOST_CHOICES ? [...sets, [...paid]] : sets;
}

function hasParts(
  kit: GridKit,
  clocks: readonly number[],
  prices: Prices,
  week: number,
  used: ReadonlyMap<number, number>,
): boolean {
  const after = usedAfter(kit, clocks, used);
  if (after === used) return true;
  return [...after].every(([part, count]) => count === (used.get(part) ?? 0) || count <= prices.left[part]![week]!);
}

function usedAfter(
  kit: GridKit,
  clocks: readonly number[],
  used: ReadonlyMap<number, number>,
): ReadonlyMap<number, number> {
  if (!clocks.some((index) => kit.clocks[index]!.parts.length > 0)) return used;
  const after = new Map(used);
  for (const { part, count } of clocks.flatMap((index) => kit.clocks[index]!.parts)) {
    after.set(part, (after.get(part) ?? 0) + count);
  }
  return after;
}

function open({ kit, prices, week }: At, way: Way, renews: readonly number[]): Way {
  const good = way.good.map((one, index) => (renews.includes(index) ? goodAfter(kit.clocks[index]!, week) : one));
  const day = way.day.map((one, index) => (renews.includes(index) ? week * WEEK + kit.clocks[index]!.renewedFor : one));
  const wasted = renews
    .filter((index) => kit.clocks[index]!.parts.length > 0)
    .reduce((sum, index) => sum + Math.max(0, way.day[index]! - week * WEEK), 0);
  return {
    cost: way.cost + COST.opening + prices.level[week]! + wasted * COST.day,
    good,
    day,
    back: week + kit.weeksOut,
    used: usedAfter(kit, renews, way.used),
    opened: { week, renews, before: way },
  };
}

function passWeek(kit: GridKit, prices: Prices, week: number, way: Way): Way {
  const lapsed = kit.clocks.filter((_, index) => way.good[index]! < week);
  const isReady = week >= way.back && !lapsed.some((clock) => clock.grounds);
  const cost = way.cost + lapsed.length * COST.late + (isReady ? 0 : prices.notReady[week]!);
  return cost === way.cost ? way : { ...way, cost };
}

function unbeaten(ways: readonly Way[], most: number): readonly Way[] {
  const kept: Way[] = [];
  const sorted = ways.toSorted((one, other) => one.cost - other.cost);
  const dearest = Number.isFinite(most) ? sorted[0]!.cost + MARGIN : Number.POSITIVE_INFINITY;
  for (const way of sorted) {
    if (kept.length >= most || way.cost > dearest) break;
    if (!kept.some((other) => beats(other, way))) kept.push(way);
  }
  return kept;
}

function beats(one: Way, other: Way): boolean {
  if (one.back > other.back) return false;
  for (let index = 0; index < one.good.length; index += 1) if (one.good[index]! < other.good[index]!) return false;
  if (one.used.size > 0) for (const [part, count] of one.used) if (count > (other.used.get(part) ?? 0)) return false;
  return true;
}

function openingsOf(kit: number, last: Way): Opening[] {
  const found: Opening[] = [];
  for (let way: Way = last; way.opened; way = way.opened.before) {
    found.push({ kit, week: way.opened.week, renews: way.opened.renews });
  }
  return found.toReversed();
}
