import { firstOf, nth, numberAt, sum } from "#base";
import { NOTHING, type FaultCase, type Move, type FaultStep } from "./fault-case.ts";
import type { Search } from "./exact-search.ts";

/** An order of steps and what it costs, the fallback taken where that is best. */
interface Order {
  readonly cost: number;
  readonly order: readonly number[];
}

/** What a step ends, without the causes it does nothing about. */
interface Reach {
  readonly causes: Int32Array;
  readonly ends: Float64Array;
}

/**
 * A good next thing where there are too many to search: steps by chance of ending the trouble now per cost, covers in the
 * cost and shared by what lies behind them, the fallback where it is cheapest to stop; a test first where that lowers it.
 *
 * @param given - the case
 * @param withTests - whether a test may come first
 * @returns the cost of that way, its first move, and the order of steps
 * @range steps² · causes, for every answer of every test; exact where each check finds one cause of its own
 * @source Kadane & Simon, Ann. Statist. 5 (1977) 237-255 (chance over cost, FROM MEMORY); one test ahead DERIVED
 */
export function ruleOfThumb(given: FaultCase, withTests: boolean): Search {
  const reaches = given.steps.map(reachOf);
  const plain = orderOf(given, reaches, Float64Array.from(given.chances));
  const first: Move = plain.order.length > 0 ? { kind: "step", index: firstOf(plain.order) } : { kind: "fallback" };
  const start: Search = { cost: plain.cost, move: first, order: plain.order };
  if (!withTests) return start;
  return given.tests.reduce<Search>((best, { cost, positive }, index) => {
    const yes = Float64Array.from(given.chances, (weight, c) => weight * nth(positive, c));
    const no = Float64Array.from(given.chances, (weight, c) => weight * (1 - nth(positive, c)));
    const answered = orderOf(given, reaches, yes).cost + orderOf(given, reaches, no).cost;
    const tested = cost * sum(given.chances) + answered;
    return tested < best.cost ? { ...best, cost: tested, move: { kind: "test", index } } : best;
  }, start);
}

function reachOf({ ends }: FaultStep): Reach {
  const causes = ends.flatMap((end, c) => (end > 0 ? [c] : []));
  return { causes: Int32Array.from(causes), ends: Float64Array.from(causes, (c) => nth(ends, c)) };
}

/** What is known while an order is being made: what may still be, what is still to do, what stands open. */
interface Bench {
  readonly given: FaultCase;
  readonly reaches: readonly Reach[];
  readonly weights: Float64Array;
  readonly left: Set<number>;
  readonly open: Set<number>;
}

function orderOf(given: FaultCase, reaches: readonly Reach[], weights: Float64Array): Order {
  const bench: Bench = { given, reaches, weights, left: new Set(given.steps.keys()), open: new Set() };
  const order: number[] = [];
  let spent = 0;
  let whole = total(weights);
  let best = { cost: stopCost(given, whole), length: 0 };
  while (whole > NOTHING) {
    const next = bestStep(bench);
    if (next === undefined) break;
    spent += take(bench, next, whole);
    whole = total(weights);
    order.push(next);
    const cost = spent + stopCost(given, whole);
    if (cost < best.cost) best = { cost, length: order.length };
  }
  return { cost: best.cost, order: order.slice(0, best.length) };
}

function total(weights: Float64Array): number {
  let all = 0;
  for (const weight of weights) all += weight;
  return all;
}

/** Does a step that does not help; what that cost, its repair in where it would have helped. */
function take({ given, reaches, weights, left, open }: Bench, index: number, whole: number): number {
  const { cost, cover, repair } = nth(given.steps, index);
  const { causes, ends } = nth(reaches, index);
  const opening = cover === undefined || open.has(cover) ? 0 : nth(given.covers, cover);
  let ended = 0;
  for (const [i, c] of causes.entries()) {
    ended += numberAt(weights, c) * numberAt(ends, i);
    weights[c] = numberAt(weights, c) * (1 - numberAt(ends, i));
  }
  left.delete(index);
  if (cover !== undefined) open.add(cover);
  return (cost + opening) * whole + ended * repair;
}

/** What is left goes to the fallback; nothing left costs nothing. */
function stopCost({ fallback }: FaultCase, whole: number): number {
  if (whole <= NOTHING) return 0;
  return fallback === undefined ? Infinity : fallback * whole;
}

function bestStep(bench: Bench): number | undefined {
  let best: number | undefined;
  let most = 0;
  for (const index of bench.left) {
    const worth = worthNow(bench, index);
    if (worth > most) [best, most] = [index, worth];
  }
  return best;
}

/** Chance of ending the trouble per cost; behind a closed cover, of the best run of things there that share its cost. */
function worthNow(bench: Bench, index: number): number {
  const { given, left, open } = bench;
  const { cover } = nth(given.steps, index);
  const own = { ends: endsNow(bench, index), cost: costOf(given, index) };
  if (cover === undefined || open.has(cover)) return own.ends / own.cost;
  const behind = [...left]
    .filter((other) => other !== index && nth(given.steps, other).cover === cover)
    .map((other) => ({ ends: endsNow(bench, other), cost: costOf(given, other) }))
    .filter((other) => other.ends / other.cost <= own.ends / own.cost);
  let run = { ends: own.ends, cost: own.cost + nth(given.covers, cover) };
  let best = run.ends / run.cost;
  for (const other of behind.toSorted((a, b) => b.ends / b.cost - a.ends / a.cost)) {
    run = { ends: run.ends + other.ends, cost: run.cost + other.cost };
    best = Math.max(best, run.ends / run.cost);
  }
  return best;
}

function endsNow({ reaches, weights }: Bench, index: number): number {
  const { causes, ends } = nth(reaches, index);
  let all = 0;
  for (let i = 0; i < causes.length; i += 1) all += numberAt(weights, nth(causes, i)) * numberAt(ends, i);
  return all;
}

function costOf({ steps }: FaultCase, index: number): number {
  return Math.max(nth(steps, index).cost, 1e-12);
}
