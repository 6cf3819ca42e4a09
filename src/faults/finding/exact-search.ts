import { nth, sum } from "#base";
import { leftAfter, NOTHING, onlyCause, priceOf, type FaultCase, type Move } from "./fault-case.ts";

/** The least expected cost from a state, and the move that has it. */
interface Worth {
  readonly cost: number;
  readonly move: Move;
}

/** A state: steps done without success, and tests with their answers (0 not done, 1 negative, 2 positive). */
interface State {
  readonly done: number;
  readonly answers: number;
  readonly weights: readonly number[];
}

export interface Search {
  readonly cost: number;
  readonly move: Move;
  /** Steps in order where nothing helps and no test is done. */
  readonly order: readonly number[];
}

/**
 * The least expected cost of ending the trouble, over all ways to choose the next thing from what has been seen.
 *
 * V(w) = min{ fallback · Σw; step: price + V(w · (1 − ends)); test: cost · Σw + V(w · positive) + V(w · (1 − positive)) },
 * each step and each test at most once
 *
 * @param given - the case
 * @param withTests - whether tests may be done
 * @returns least cost, the first move, and the order of steps where none helps
 * @range 2^steps · 3^tests states
 * @source DERIVED: dynamic programming; Heckerman, Breese & Rommelse, CACM 38(3) 1995 (FROM MEMORY) for the model
 */
export function exactSearch(given: FaultCase, withTests: boolean): Search {
  const known = new Map<number, Worth>();
  const size = withTests ? 3 ** given.tests.length : 1;
  const worthOf = (state: State): Worth => {
    const key = state.done * size + state.answers;
    const found = known.get(key);
    if (found) return found;
    const worth = bestMove(given, state, withTests, (next) => worthOf(next).cost);
    known.set(key, worth);
    return worth;
  };
  const start = { done: 0, answers: 0, weights: given.chances };
  const { cost, move } = worthOf(start);
  return { cost, move, order: withTests ? [] : orderFrom(given, start, (state) => worthOf(state).move) };
}

function bestMove(given: FaultCase, state: State, withTests: boolean, costOf: (next: State) => number): Worth {
  const whole = sum(state.weights);
  if (whole <= NOTHING) return { cost: 0, move: { kind: "fallback" } };
  const moves = [
    ...fallbackMoves(given, whole),
    ...inferMoves(given, state),
    ...stepMoves(given, state, costOf),
    ...(withTests ? testMoves(given, state, costOf) : []),
  ];
  return moves.reduce((best, one) => (one.cost < best.cost ? one : best), STUCK);
}

const STUCK: Worth = { cost: Infinity, move: { kind: "fallback" } };

function fallbackMoves({ fallback }: FaultCase, whole: number): readonly Worth[] {
  return fallback === undefined ? [] : [{ cost: fallback * whole, move: { kind: "fallback" } }];
}

function inferMoves(given: FaultCase, state: State): readonly Worth[] {
  const cause = given.lastIsInferred ? onlyCause(state.weights) : undefined;
  if (cause === undefined) return [];
  return given.steps.flatMap((step, index): readonly Worth[] => {
    if (step.ends[cause] !== 1 || isDone(state, index)) return [];
    const price = priceOf({ ...step, cost: 0 }, state.weights, openIn(given, state), given.covers);
    return [{ cost: price, move: { kind: "infer", index } }];
  });
}

function stepMoves(given: FaultCase, state: State, costOf: (next: State) => number): readonly Worth[] {
  const isOpen = openIn(given, state);
  return given.steps.flatMap((step, index): readonly Worth[] => {
    if (isDone(state, index) || !step.ends.some((end, c) => end > 0 && nth(state.weights, c) > NOTHING)) return [];
    const price = priceOf(step, state.weights, isOpen, given.covers);
    return [{ cost: price + costOf(stepped(given, state, index)), move: { kind: "step", index } }];
  });
}

function testMoves(given: FaultCase, state: State, costOf: (next: State) => number): readonly Worth[] {
  return given.tests.flatMap((test, index): readonly Worth[] => {
    const place = 3 ** index;
    if (Math.floor(state.answers / place) % 3 !== 0) return [];
    const split = (answer: 1 | 2) => ({
      ...state,
      answers: state.answers + answer * place,
      weights: state.weights.map((w, c) => w * (answer === 2 ? nth(test.positive, c) : 1 - nth(test.positive, c))),
    });
    const price = test.cost * sum(state.weights);
    return [{ cost: price + costOf(split(1)) + costOf(split(2)), move: { kind: "test", index } }];
  });
}

function isDone({ done }: State, index: number): boolean {
  return Math.floor(done / 2 ** index) % 2 === 1;
}

function stepped(given: FaultCase, state: State, index: number): State {
  return { ...state, done: state.done + 2 ** index, weights: leftAfter(nth(given.steps, index), state.weights) };
}

/** A cover is open once anything behind it has been done. */
function openIn(given: FaultCase, state: State): (cover: number) => boolean {
  return (cover) => given.steps.some((step, index) => step.cover === cover && isDone(state, index));
}

function orderFrom(given: FaultCase, start: State, moveOf: (state: State) => Move): readonly number[] {
  const order: number[] = [];
  let state = start;
  for (;;) {
    if (sum(state.weights) <= NOTHING) return order;
    const move = moveOf(state);
    if (move.kind === "infer") return [...order, move.index];
    if (move.kind !== "step") return order;
    order.push(move.index);
    state = stepped(given, state, move.index);
  }
}
