import { assert } from "#base";
import { beginCrossings, findCrossings, isMetAt, type Crossing, type OdeEvent } from "./events.ts";
import type { Interpolant, Jacobian, Rate, Stepper } from "./ode-contract.ts";
import { dormandPrince } from "./ode-dormand-prince.ts";
import { rosenbrock } from "./ode-rosenbrock.ts";

export interface OdeProblem {
  readonly rate: Rate;
  readonly from: number;
  readonly to: number;
  readonly start: readonly number[] | Float64Array;
  readonly jacobian?: Jacobian;
}

export interface OdeOptions {
  /** Error allowed per step, relative to each component. Default 1e-6. */
  readonly relative?: number;
  /** Error allowed per step beside the relative part, in the unit of the component. Default 1e-9. */
  readonly absolute?: number;
  /** Attempts, accepted or not, before giving up. Default 10 000. */
  readonly maxAttempts?: number;
  /** Longest step. Default: the whole span. */
  readonly longestStep?: number;
  readonly events?: readonly OdeEvent[];
  /** `explicit` Dormand-Prince 5(4); `stiff` Rosenbrock 3(2); `either` (default) turns to stiff where the explicit one crawls. */
  readonly method?: "explicit" | "stiff" | "either";
}

export type OdeEnd =
  | "finished"
  | "stopped" // by a terminal event
  | "too-many-attempts"
  | "step-too-small"
  | "not-finite";

export interface OdeCounters {
  steps: number;
  rejected: number;
  rates: number;
}

export interface OdeSolution {
  readonly kind: OdeEnd;
  readonly because: string;
  readonly t: number;
  readonly y: Float64Array;
  readonly crossings: readonly Crossing[];
  readonly counters: Readonly<OdeCounters>;
  /** State at any instant between the start and `t`, from the interpolant of the step it falls in. */
  at(t: number): Float64Array;
}

interface Piece {
  readonly from: number;
  readonly length: number;
  readonly interpolant: Interpolant;
}

const SAFETY = 0.9;
const SHRINK_MOST = 0.2;
const GROW_MOST = 6;
/** So many explicit steps at ordinary tolerances mean that stability, not accuracy, sets them. */
const LONG_RUN = 1000;

/**
 * Integrates an initial value problem with adaptive steps, dense output and events.
 *
 * A run that cannot go on is an ordinary outcome: see `kind` and `because`.
 *
 * @param problem - y' = f(t, y) from `from` to `to` (later than `from`)
 * @param options - tolerances, events, method
 * @returns end state, events met in order of time, counters, and the state at any instant between
 * @range smooth or piecewise smooth f; a kink costs a few rejected steps
 * @source Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I, 2nd ed., 1993, II.4-II.6 (FROM MEMORY)
 * @example solveOde({ rate: (t, y, out) => { out[0] = -y[0]!; }, from: 0, to: 1, start: [1] }).y[0] // 0.36788
 */
export function solveOde(problem: OdeProblem, options: OdeOptions = {}): OdeSolution {
  assert(problem.to >= problem.from, "an integration ends after it starts");
  const run = beginRun(problem, options);
  while (run.end === undefined) takeStep(run);
  return closeRun(run);
}

interface Run {
  readonly problem: OdeProblem;
  readonly options: OdeOptions;
  readonly counters: OdeCounters;
  readonly pieces: Piece[];
  readonly crossings: Crossing[];
  readonly signs: Int8Array;
  stepper: Stepper;
  t: number;
  y: Float64Array;
  h: number;
  end: { readonly kind: OdeEnd; readonly because: string } | undefined;
}

function beginRun(problem: OdeProblem, options: OdeOptions): Run {
  const counters: OdeCounters = { steps: 0, rejected: 0, rates: 0 };
  const y = Float64Array.from(problem.start);
  const stepper = makeStepper(problem, options, counters, options.method === "stiff" ? "stiff" : "explicit");
  const run: Run = {
    problem,
    options,
    counters,
    pieces: [],
    crossings: [],
    signs: beginCrossings(options.events ?? [], problem.from, y),
    stepper,
    t: problem.from,
    y,
    h: firstStep(problem, options, y, counters),
    end: undefined,
  };
  if (problem.to === problem.from) run.end = { kind: "finished", because: "the span is empty" };
  return run;
}

function makeStepper(
  problem: OdeProblem,
  options: OdeOptions,
  counters: OdeCounters,
  method: "explicit" | "stiff",
): Stepper {
  const rate: Rate = (t, y, out) => {
    counters.rates += 1;
    problem.rate(t, y, out);
  };
  const scale = { relative: options.relative ?? 1e-6, absolute: options.absolute ?? 1e-9 };
  const size = problem.start.length;
  return method === "stiff" ? rosenbrock(rate, size, scale, problem.jacobian) : dormandPrince(rate, size, scale);
}

function firstStep(problem: OdeProblem, options: OdeOptions, y: Float64Array, counters: OdeCounters): number {
  const slope = new Float64Array(y.length);
  problem.rate(problem.from, y, slope);
  counters.rates += 1;
  const span = problem.to - problem.from;
  const longest = Math.min(span, options.longestStep ?? span);
  const least = options.absolute ?? 1e-9;
  let h = longest;
  for (let i = 0; i < y.length; i += 1) {
    const speed = Math.abs(slope[i]!);
    if (speed > 0) h = Math.min(h, (0.02 * Math.max(Math.abs(y[i]!), Math.sqrt(least))) / speed);
  }
  return Math.max(h, span * 1e-9);
}

function takeStep(run: Run): void {
  const { problem, options, counters, stepper } = run;
  const left = problem.to - run.t;
  const h = Math.min(run.h, options.longestStep ?? left, left);
  const isLast = h >= left * (1 - 1e-12);
  const error = stepper.attempt(run.t, run.y, h);
  if (counters.steps + counters.rejected >= (options.maxAttempts ?? 10_000)) {
    run.end = { kind: "too-many-attempts", because: `gave up at t = ${run.t} after ${counters.steps} steps` };
  } else if (error <= 1) {
    acceptStep(run, isLast ? left : h, isLast);
    run.h = h * nextFactor(error, stepper.order, GROW_MOST);
  } else {
    rejectStep(run, h, error);
  }
}

function nextFactor(error: number, order: number, most: number): number {
  if (error === 0) return most;
  return Math.min(most, Math.max(SHRINK_MOST, SAFETY * error ** (-1 / order)));
}

function rejectStep(run: Run, h: number, error: number): void {
  run.counters.rejected += 1;
  run.h = h * (Number.isFinite(error) ? nextFactor(error, run.stepper.order, 1) : SHRINK_MOST);
  const smallest = 16 * Number.EPSILON * Math.max(Math.abs(run.t), Math.abs(run.problem.to));
  if (run.h > smallest) return;
  run.end = Number.isFinite(error)
    ? { kind: "step-too-small", because: `the step fell below ${smallest} at t = ${run.t}` }
    : { kind: "not-finite", because: `the rate is not finite near t = ${run.t}` };
}

function acceptStep(run: Run, h: number, isLast: boolean): void {
  const piece: Piece = { from: run.t, length: h, interpolant: run.stepper.accept() };
  const end = isLast ? run.problem.to : run.t + h;
  const next = run.stepper.next.slice();
  run.counters.steps += 1;
  run.pieces.push(piece);
  const stop = meetEvents(run, piece, end, next);
  if (stop) return;
  run.t = end;
  run.y = next;
  if (isLast) run.end = { kind: "finished", because: "the span is done" };
  else if ((run.options.method ?? "either") === "either" && isCrawling(run)) turnStiff(run);
}

function isCrawling(run: Run): boolean {
  return run.stepper.order === 5 && (run.stepper.isHeldShort() || run.counters.steps >= LONG_RUN);
}

function turnStiff(run: Run): void {
  run.stepper = makeStepper(run.problem, run.options, run.counters, "stiff");
}

/** Notes the events of a step in order of time; true when a terminal one ends the run, with what is met at its place. */
function meetEvents(run: Run, piece: Piece, end: number, next: Float64Array): boolean {
  const events = run.options.events;
  if (events === undefined || events.length === 0) return false;
  const { from, length, interpolant } = piece;
  const found = findCrossings(events, run.signs, { from, length, interpolant, end, start: run.y, next });
  if (found.length === 0) return false;
  const last = found.findIndex(({ event }) => event.terminal);
  const stop = found[last];
  const isMet = ({ event }: Crossing, k: number): boolean =>
    stop === undefined || k <= last || isMetAt(event, stop.at, stop.y);
  run.crossings.push(...found.filter(isMet));
  if (stop === undefined) return false;
  run.t = stop.at;
  run.y = stop.y;
  run.end = { kind: "stopped", because: stop.event.name };
  return true;
}

function closeRun(run: Run): OdeSolution {
  const end = run.end!;
  return {
    kind: end.kind,
    because: end.because,
    t: run.t,
    y: run.y,
    crossings: run.crossings,
    counters: run.counters,
    at: (t) => stateAt(run, t),
  };
}

function stateAt(run: Run, t: number): Float64Array {
  if (t >= run.t || run.pieces.length === 0) return run.y.slice();
  let low = 0;
  let high = run.pieces.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (run.pieces[middle]!.from <= t) low = middle;
    else high = middle - 1;
  }
  const piece = run.pieces[low]!;
  const out = new Float64Array(run.y.length);
  piece.interpolant(Math.max(0, (t - piece.from) / piece.length), out);
  return out;
}
