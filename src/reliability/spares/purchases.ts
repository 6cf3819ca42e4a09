import { nth } from "#base";
import { demandChances, largestOf, SINGLY, type Lot } from "./lots.ts";
import { stockOf } from "./shelf.ts";

/** A part of the shelf that may be bought. */
export interface Part {
  readonly name: string;
  /** Parts wanted in the lead time, to be expected [1]. */
  readonly pipeline: number;
  /** In which sizes they are wanted; one at a time if left out. */
  readonly lots?: readonly Lot[];
  readonly cost: number;
  /** On the shelf now. */
  readonly stock: number;
  /** More than these are never bought [1]; without end if left out. */
  readonly mostBought?: number;
}

export interface Purchase {
  readonly name: string;
  /** Spent so far, this one in. */
  readonly cost: number;
  /** Of the whole shelf, this one in. */
  readonly expectedBackorders: number;
}

export interface Purchases {
  /** Stock of every part after buying. */
  readonly stock: readonly number[];
  readonly purchases: readonly Purchase[];
  readonly exact: boolean;
  /** Backorders that a better choice could save at most. */
  readonly gap: number;
}

/** One more of a part: what it saves. */
interface Step {
  readonly part: number;
  readonly cost: number;
  readonly gain: number;
}

/** Half-made choices kept at most; beyond it marginal analysis answers, with its gap. */
const MOST_CHOICES = 60_000;
/** Gains below this are not worth a purchase. */
const NOTHING = 1e-12;

/**
 * The purchases within a budget that leave the fewest demands waiting.
 *
 * Marginal analysis buys what saves most per cost; where it is best for its spending it is best of all. What it leaves of
 * the budget is searched exactly: all choices that no other beats in both cost and backorders, bounded by the fractional
 * purchase.
 *
 * @param parts - the shelf; costs > 0
 * @param budget - at least 0 [unit of the costs]
 * @returns stock and purchases in the order of what they save per cost
 * @source Sherbrooke, Optimal Inventory Modeling of Systems, 2004, marginal analysis (FROM MEMORY); exact search DERIVED
 */
export function bestPurchases(parts: readonly Part[], budget: number): Purchases {
  const start = parts.reduce(
    (sum, { pipeline, stock, lots }) => sum + stockOf(pipeline, stock, lots).expectedBackorders,
    0,
  );
  const ladders = parts.map((part, i) => ladderOf(part, i, budget));
  const { steps: greedy, bound } = marginal(ladders, budget);
  const gained = greedy.reduce((sum, { gain }) => sum + gain, 0);
  const better = bound - gained > 1e-12 ? exactSearch(ladders, budget, gained) : [];
  const steps = better && better.length > 0 ? inOrder(better) : greedy;
  const reached = steps.reduce((sum, { gain }) => sum + gain, 0);
  const gap = better === undefined ? bound - reached : 0;
  return { ...listed(parts, steps, start), exact: better !== undefined, gap };
}

/** What each further one of a part saves; never more than the one before. */
function ladderOf(
  { pipeline, cost, stock, lots = SINGLY, mostBought = Infinity }: Part,
  part: number,
  budget: number,
): readonly Step[] {
  const most = Math.min(mostBought, Math.floor(budget / cost + 1e-9), Math.ceil(3 * pipeline + 60 * largestOf(lots)));
  const chances = demandChances(pipeline, stock + most + Math.ceil(2 * pipeline) + 60 * largestOf(lots), lots);
  const above = (s: number) => chances.slice(s + 1).reduceRight((sum, chance) => sum + chance, 0);
  const steps = Array.from({ length: most }, (_, n) => ({ part, cost, gain: above(stock + n) }));
  return steps.filter(({ gain }) => gain > NOTHING);
}

function perCost({ gain, cost }: Step): number {
  return gain / cost;
}

function inOrder(steps: readonly Step[]): readonly Step[] {
  return steps.toSorted((one, other) => perCost(other) - perCost(one));
}

/** Bought by gain per cost while the budget lasts, skipping what it no longer pays for; the bound allows a broken part. */
function marginal(ladders: readonly (readonly Step[])[], budget: number) {
  const steps: Step[] = [];
  const stopped = new Set<number>();
  let [left, bound] = [budget, -1];
  for (const step of inOrder(ladders.flat())) {
    if (stopped.has(step.part)) continue;
    if (step.cost <= left + 1e-9) {
      left -= step.cost;
      steps.push(step);
    } else {
      if (bound < 0) bound = total(steps) + left * perCost(step);
      stopped.add(step.part);
    }
  }
  return { steps, bound: bound < 0 ? total(steps) : bound };
}

function total(steps: readonly Step[]): number {
  return steps.reduce((sum, { gain }) => sum + gain, 0);
}

interface Choice {
  readonly cost: number;
  readonly gain: number;
  readonly before?: Choice;
  readonly part: number;
  readonly bought: number;
}

/** Purchases better than those known, if there are any; undefined where there are too many choices to look at. */
function exactSearch(
  ladders: readonly (readonly Step[])[],
  budget: number,
  known: number,
): readonly Step[] | undefined {
  let choices: readonly Choice[] = [{ cost: 0, gain: 0, part: -1, bought: 0 }];
  for (const [part, ladder] of ladders.entries()) {
    const rest = inOrder(ladders.slice(part + 1).flat());
    const grown = choices.flatMap((choice) => extended(choice, ladder, part, budget));
    if (grown.length > 40 * MOST_CHOICES) return undefined;
    choices = unbeaten(grown).filter(({ cost, gain }) => gain + relaxed(rest, budget - cost) > known + 1e-13);
    if (choices.length > MOST_CHOICES) return undefined;
  }
  const best = choices.reduce<Choice | undefined>(
    (one, other) => (one && one.gain >= other.gain ? one : other),
    undefined,
  );
  return best === undefined || best.gain <= known ? [] : stepsOf(best, ladders);
}

function extended(choice: Choice, ladder: readonly Step[], part: number, budget: number): readonly Choice[] {
  const all: Choice[] = [{ ...choice, before: choice, part, bought: 0 }];
  let { cost, gain } = choice;
  for (const [n, step] of ladder.entries()) {
    cost += step.cost;
    gain += step.gain;
    if (cost > budget + 1e-9) break;
    all.push({ cost, gain, before: choice, part, bought: n + 1 });
  }
  return all;
}

function unbeaten(choices: readonly Choice[]): readonly Choice[] {
  let most = -1;
  return choices
    .toSorted((one, other) => one.cost - other.cost || other.gain - one.gain)
    .filter(({ gain }) => {
      const isBetter = gain > most;
      most = Math.max(most, gain);
      return isBetter;
    });
}

function relaxed(steps: readonly Step[], budget: number): number {
  let [left, gain] = [budget, 0];
  for (const step of steps) {
    const share = Math.min(1, left / step.cost);
    gain += share * step.gain;
    left -= share * step.cost;
    if (share < 1) break;
  }
  return gain;
}

function stepsOf(choice: Choice, ladders: readonly (readonly Step[])[]): readonly Step[] {
  const own = choice.part < 0 ? [] : nth(ladders, choice.part).slice(0, choice.bought);
  return choice.before ? [...stepsOf(choice.before, ladders), ...own] : own;
}

function listed(parts: readonly Part[], steps: readonly Step[], start: number) {
  const stock = parts.map((part) => part.stock);
  let [cost, left] = [0, start];
  const purchases = steps.map((step) => {
    stock[step.part] = nth(stock, step.part) + 1;
    cost += step.cost;
    left -= step.gain;
    return { name: nth(parts, step.part).name, cost, expectedBackorders: Math.max(0, left) };
  });
  return { stock, purchases };
}
