import { isCovered } from "./crews.ts";
import type { Grid, GridKit } from "./grid.ts";

/** What rounding may leave of a minute. */
const ROUNDING = 1e-6;
/** Ways to name people that are tried in one week before shares may be unequal. */
const MOST_TRIES = 20_000;

/** People of a crew looked at for one piece of work. */
const MOST_ABLE = 8;

/** Work asked of a crew in a week [min]. */
export interface Work {
  readonly crew: number;
  readonly minutes: number;
}

/** What opening this kit in this week asks of people. */
export function workOf(kit: GridKit, week: number): Work {
  return { crew: kit.crews[week]!, minutes: kit.minutes };
}

/** Work of one opening by person [min]; who is not in it has no part of the work. */
export type Shares = ReadonlyMap<number, number>;

/**
 * Whether people can share this week's work within their hours and what they may do.
 * @source DERIVED: a transport problem, feasible where a greatest flow carries all the work (Ford and Fulkerson 1956)
 */
export function canShare(grid: Grid, week: number, work: readonly Work[]): boolean {
  const minutes = grid.crews.map((_, crew) =>
    work.reduce((sum, one) => (one.crew === crew ? sum + one.minutes : sum), 0),
  );
  const byCrew = minutes.flatMap((sum, crew) => (sum > 0 ? [{ crew, minutes: sum }] : []));
  return flowShares(grid, week, byCrew) !== undefined;
}

/**
 * Who does which minutes of each opening: who may do it alone before who must be seen; as many as are needed at once, one
 * person where that is one, else equal shares, else whatever fits.
 * @param kits - opened in the week
 * @param load - by person: share of their hours of the year that is given out already, so that all come to the same
 * @returns one map per piece, or undefined where the hours are not enough
 */
export function shareWork(
  grid: Grid,
  week: number,
  kits: readonly GridKit[],
  load: readonly number[],
): readonly Shares[] | undefined {
  const work = kits.map((kit) => workOf(kit, week));
  return equalShares(grid, week, kits, load) ?? flowShares(grid, week, work);
}

/** Pieces in order of size; for each, the fewest people first, those with the least load first, then most hours left. */
function equalShares(
  grid: Grid,
  week: number,
  kits: readonly GridKit[],
  load: readonly number[],
): readonly Shares[] | undefined {
  const order = kits.map((_, index) => index).toSorted((one, other) => kits[other]!.minutes - kits[one]!.minutes);
  const left = grid.minutes.map((minutes) => minutes[week]!);
  const found: Shares[] = kits.map(() => new Map<number, number>());
  let tries = 0;
  const place = (at: number): boolean => {
    const piece = order[at];
    if (piece === undefined) return true;
    const kit = kits[piece]!;
    for (const people of groupsOf(kit, grid.crews[kit.crews[week]!]!, { left, load })) {
      if ((tries += 1) > MOST_TRIES) return false;
      const share = kit.minutes / people.length;
      for (const person of people) left[person] = left[person]! - share;
      found[piece] = new Map(people.map((person) => [person, share]));
      if (place(at + 1)) return true;
      for (const person of people) left[person] = left[person]! + share;
    }
    return false;
  };
  return place(0) ? found : undefined;
}

interface Given {
  readonly left: readonly number[];
  readonly load: readonly number[];
}

/** Groups that may do it alone, then those in which each is seen by another, then those seen by somebody beside them. */
function groupsOf(kit: GridKit, crew: readonly number[], given: Given): number[][] {
  const alone = groupsAmong(
    crew.filter((one) => kit.crew.alone.includes(one)),
    kit,
    given,
  );
  if (crew.every((one) => kit.crew.alone.includes(one))) return alone;
  const mixed = groupsAmong(crew, kit, given);
  const isOwn = (people: readonly number[]) =>
    people.every((one) => isCovered(kit.crew, one, (other) => people.includes(other)));
  return [...alone, ...mixed.filter(isOwn), ...mixed.filter((people) => !isOwn(people))];
}

/** Groups of up to three, of as many as are needed at once, or the whole crew, each of whom has an equal share left. */
function groupsAmong(crew: readonly number[], { minutes, hands }: GridKit, { left, load }: Given): number[][] {
  const here = crew.filter((one) => left[one]! > ROUNDING);
  const able = here
    .toSorted((one, other) => load[one]! - load[other]! || left[other]! - left[one]!)
    .slice(0, MOST_ABLE);
  const pairs = able.flatMap((one, at) => able.slice(at + 1).map((other) => [one, other]));
  const threes = pairs.flatMap(([one, other]) =>
    able.slice(able.indexOf(other!) + 1).map((third) => [one!, other!, third]),
  );
  const many = hands > 3 && able.length > 3 ? [able.slice(0, hands)] : [];
  const groups = [...able.map((one) => [one]), ...pairs, ...threes, ...many, ...(crew.length > 3 ? [[...crew]] : [])];
  const fits = groups.filter((people) => people.every((one) => left[one]! + ROUNDING >= minutes / people.length));
  const isWhole = ({ length }: readonly number[]) => length >= Math.min(hands, here.length);
  return [...fits.filter(isWhole), ...fits.filter((people) => !isWhole(people))];
}

/** Augments along shortest ways until all the work is given out. */
function flowShares(grid: Grid, week: number, work: readonly Work[]): readonly Shares[] | undefined {
  const left = grid.minutes.map((minutes) => minutes[week]!);
  const shares = work.map(() => new Map<number, number>());
  for (const [piece, { minutes }] of work.entries()) {
    let open = minutes;
    while (open > ROUNDING) {
      const moved = augment(grid, { work, shares, left }, piece, open);
      if (moved === 0) return undefined;
      open -= moved;
    }
  }
  return shares;
}

interface Flow {
  readonly work: readonly Work[];
  readonly shares: Map<number, number>[];
  readonly left: number[];
}

interface Hop {
  readonly piece: number;
  readonly person: number;
  readonly before: Hop | undefined;
}

/** Gives minutes of a piece to somebody with hours left, moving others' work on where it must. @returns minutes given */
function augment(grid: Grid, flow: Flow, piece: number, open: number): number {
  const seen = new Set<number>();
  const line: Hop[] = [];
  const reach = (from: number, before: Hop | undefined) => {
    for (const person of grid.crews[flow.work[from]!.crew]!) {
      if (seen.has(person)) continue;
      seen.add(person);
      line.push({ piece: from, person, before });
    }
  };
  reach(piece, undefined);
  for (let at = 0; at < line.length; at += 1) {
    const hop = line[at]!;
    if (flow.left[hop.person]! > ROUNDING) return move(flow, hop, open);
    for (const [other, shares] of flow.shares.entries()) {
      if ((shares.get(hop.person) ?? 0) > ROUNDING) reach(other, hop);
    }
  }
  return 0;
}

function move(flow: Flow, last: Hop, open: number): number {
  let amount = Math.min(open, flow.left[last.person]!);
  for (let hop: Hop = last; hop.before; hop = hop.before) {
    amount = Math.min(amount, flow.shares[hop.piece]!.get(hop.before.person)!);
  }
  flow.left[last.person] = flow.left[last.person]! - amount;
  for (let hop: Hop | undefined = last; hop; hop = hop.before) {
    const shares = flow.shares[hop.piece]!;
    shares.set(hop.person, (shares.get(hop.person) ?? 0) + amount);
    if (hop.before) lessen(shares, hop.before.person, amount);
  }
  return amount;
}

function lessen(shares: Map<number, number>, person: number, amount: number): void {
  const rest = shares.get(person)! - amount;
  if (rest > ROUNDING) shares.set(person, rest);
  else shares.delete(person);
}
