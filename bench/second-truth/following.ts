// Follows the water in a boat through time: an embedded pair of orders 3 and 2, every step judged, water booked in and
// out beside the level it leaves.
import { inflowBy, takenBy, type Hole, type Pump } from "./flows.ts";
import { lieOf, type Lies } from "./lies.ts";

/** What is open and what runs, from a time on [s]. */
export interface Stage {
  readonly from: number;
  readonly holes: readonly Hole[];
  readonly pumps: readonly Pump[];
}

export interface Trace {
  /** Every `every` seconds from `from` on; the last is the moment of loss, where she is lost. */
  readonly at: readonly number[];
  readonly flood: readonly number[];
  /** Run in and taken out since `from` [m³]. */
  readonly taken: { readonly in: number; readonly out: number };
  readonly lostAt?: number;
}

export interface Span {
  readonly from: number;
  readonly to: number;
  readonly every: number;
}

/** Most that one step may be off [m³]. */
const EXACT = 2e-6;
const SHORTEST = 1e-3;

/**
 * Follows her until the span ends or she is lost.
 *
 * @param lies - of this boat
 * @param start - water in her at the start [m³]
 * @param stages - in order of time; the one in force at the start among them
 * @param span - from, to, and how often it is kept [s]
 */
export function follow(lies: Lies, start: number, stages: readonly Stage[], span: Span): Trace {
  const trace = { at: [span.from], flood: [start], taken: { in: 0, out: 0 } };
  if (start >= lies.lostWith) return { ...trace, lostAt: span.from };
  const stops = stopsOf(stages, span);
  for (let n = 1; n < stops.length; n += 1) {
    const lostAt = followTo(lies, stageAt(stages, stops[n - 1]!), trace, stops[n]!);
    if (lostAt !== undefined) return { ...trace, lostAt };
  }
  return trace;
}

/** The stage in force. */
export function stageAt(stages: readonly Stage[], at: number): Stage {
  return stages.findLast(({ from }) => from <= at) ?? stages[0]!;
}

function stopsOf(stages: readonly Stage[], { from, to, every }: Span): readonly number[] {
  const even = Array.from({ length: Math.ceil((to - from) / every) + 1 }, (_, n) => Math.min(to, from + n * every));
  const cuts = stages.map((stage) => stage.from).filter((at) => at > from && at < to);
  return [...new Set([...even, ...cuts])].sort((a, b) => a - b);
}

interface Growing {
  readonly at: number[];
  readonly flood: number[];
  readonly taken: { in: number; out: number };
}

interface Rate {
  readonly in: number;
  readonly out: number;
}

/** Dry, a pump takes what runs in and no more: else she would be dry and not dry in turns, without end. */
function rateOf(lies: Lies, { holes, pumps }: Stage, flood: number): Rate {
  const surfaces = lieOf(lies, flood);
  let [into, out] = [0, 0];
  for (const hole of holes) into += inflowBy(hole, surfaces);
  for (const pump of pumps) out += takenBy(pump, surfaces);
  if (flood > 0) return { in: into, out };
  return { in: Math.max(0, into), out: Math.max(0, Math.min(into, out)) };
}

/** Bogacki and Shampine's pair, Applied Mathematics Letters 2 (1989) 321. */
function followTo(lies: Lies, stage: Stage, trace: Growing, to: number): number | undefined {
  let [at, flood] = [trace.at.at(-1)!, trace.flood.at(-1)!];
  let step = to - at;
  while (at < to) {
    step = Math.min(step, to - at);
    const tried = tryStep(lies, stage, flood, step);
    if (tried.error > EXACT && step > SHORTEST) {
      step *= Math.max(0.2, 0.9 * Math.cbrt(EXACT / tried.error));
      continue;
    }
    if (tried.flood >= lies.lostWith) return lose(trace, tried, { at, flood, step, lostWith: lies.lostWith });
    at = to - at - step < 1e-9 ? to : at + step;
    flood = Math.max(0, tried.flood);
    book(trace, tried);
    step *= Math.min(4, 0.9 * Math.cbrt(EXACT / Math.max(1e-12, tried.error)));
  }
  keep(trace, to, flood);
  return undefined;
}

interface Tried {
  readonly flood: number;
  readonly error: number;
  readonly in: number;
  readonly out: number;
}

function net(rate: Rate): number {
  return rate.in - rate.out;
}

function tryStep(lies: Lies, stage: Stage, flood: number, step: number): Tried {
  const rate = (y: number): Rate => rateOf(lies, stage, y);
  const one = rate(flood);
  const two = rate(flood + (step / 2) * net(one));
  const three = rate(flood + 0.75 * step * net(two));
  const sum = (of: (r: Rate) => number): number => (step / 9) * (2 * of(one) + 3 * of(two) + 4 * of(three));
  const next = flood + sum(net);
  const four = rate(next);
  const other = step * ((7 / 24) * net(one) + net(two) / 4 + net(three) / 3 + net(four) / 8);
  return { flood: next, error: Math.abs(sum(net) - other), in: sum((r) => r.in), out: sum((r) => r.out) };
}

function book(trace: Growing, tried: Tried, share = 1): void {
  trace.taken.in += share * tried.in;
  trace.taken.out += share * tried.out;
}

function keep(trace: Growing, at: number, flood: number): void {
  trace.at.push(at);
  trace.flood.push(flood);
}

function lose(
  trace: Growing,
  tried: Tried,
  from: { at: number; flood: number; step: number; lostWith: number },
): number {
  const share = (from.lostWith - from.flood) / (tried.flood - from.flood);
  book(trace, tried, share);
  keep(trace, from.at + share * from.step, from.lostWith);
  return from.at + share * from.step;
}

/** Water in her at a time within the trace [m³]. */
export function floodAt({ at, flood }: Trace, when: number): number {
  const next = Math.max(
    1,
    at.findIndex((one) => one >= when),
  );
  const [before, after] = [at[next - 1]!, at[next] ?? at[next - 1]!];
  if (after === before) return flood[next - 1]!;
  return flood[next - 1]! + ((flood[next]! - flood[next - 1]!) * (when - before)) / (after - before);
}
