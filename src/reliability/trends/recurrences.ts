import { nth } from "#base";
import { findRoot, gammaTail, normalChance, normalQuantile } from "#numerics";

/** Events of one thing, watched from 0: their times, or how many fell between looks. */
export type Recurrences =
  | { readonly kind: "times"; readonly times: readonly number[]; readonly end: number }
  | { readonly kind: "counts"; readonly ends: readonly number[]; readonly counts: readonly number[] };

export interface PowerLaw {
  /** Below 1 events thin out, above 1 they crowd [1]. */
  readonly shape: number;
  /** [time] */
  readonly scale: number;
  /** Events per unit of time at the end of the watch. */
  readonly rateNow: number;
  readonly rateLow: number;
  readonly rateHigh: number;
  /** Two-sided, of a steady rate [1]; only where times are known. */
  readonly p?: number;
}

/** How many events there were. */
export function eventsIn(events: Recurrences): number {
  return events.kind === "times" ? events.times.length : events.counts.reduce((sum, one) => sum + one, 0);
}

/**
 * Whether events crowd or thin out: the mean of their times against the middle of the watch.
 *
 * Z = (Σtᵢ − nT/2) / (T √(n/12)); for counts between looks, each counted at the middle of its span. Where the watch ended
 * with the last event, that one is no evidence: n and the sum are of those before it.
 *
 * @param events - at least one; two where the watch ended with the last
 * @returns z, above 0 where they crowd towards the end, and its two-sided p [1]
 * @source Cox & Lewis, The Statistical Analysis of Series of Events, 1966 (FROM MEMORY); NIST e-Handbook 8.2.3.4
 */
export function laplace(events: Recurrences): { readonly z: number; readonly p: number } {
  const isToLast = endsWithLast(events);
  const n = eventsIn(events) - (isToLast ? 1 : 0);
  if (n < 1) return { z: 0, p: 1 };
  const { sum: all, end, spread } = events.kind === "times" ? ofTimes(events) : ofCounts(events);
  const sum = isToLast ? all - end : all;
  const z = (sum - (n * end) / 2) / Math.sqrt(n * spread);
  return { z, p: Math.min(1, 2 * normalChance(-Math.abs(z))) };
}

/** True where the watch ended with an event: failure-truncated. A fixed end meets one by no chance at all. */
function endsWithLast(events: Recurrences): boolean {
  return events.kind === "times" && events.times.some((time) => time === events.end);
}

function ofTimes({ times, end }: { readonly times: readonly number[]; readonly end: number }) {
  return { sum: times.reduce((total, one) => total + one, 0), end, spread: (end * end) / 12 };
}

function ofCounts({ ends, counts }: { readonly ends: readonly number[]; readonly counts: readonly number[] }) {
  const end = ends.at(-1)!;
  const middles = ends.map((to, i) => (to + (ends[i - 1] ?? 0)) / 2);
  const shares = ends.map((to, i) => (to - (ends[i - 1] ?? 0)) / end);
  const square = middles.reduce((sum, middle, i) => sum + nth(shares, i) * middle * middle, 0);
  const sum = middles.reduce((total, middle, i) => total + nth(counts, i) * middle, 0);
  return { sum, end, spread: square - (end * end) / 4 };
}

/**
 * The power law of events that crowd or thin out, watched to a fixed end or to its last event.
 *
 * Expected count (t/scale)^shape; shape n/Σ ln(T/tᵢ), by maximum likelihood and not corrected for bias. Limits of the rate
 * at the end from the curvature: ± z √(2/n) in its logarithm for known times. Of a steady rate, 2 Σ ln(T/tᵢ) is chi-square with 2n
 * degrees of freedom; with 2(n − 1) where the watch ended with the last event.
 *
 * @param events - at least one, and not all at the very end
 * @param level - of confidence [1]
 * @returns shape, scale, and the rate at the end with limits; undefined where the counts settle no shape
 * @source Crow, 1974; MIL-HDBK-189 (FROM MEMORY); limits DERIVED (large-sample)
 */
export function powerLaw(events: Recurrences, level: number): PowerLaw | undefined {
  const n = eventsIn(events);
  const end = events.kind === "times" ? events.end : events.ends.at(-1)!;
  const shape = events.kind === "times" ? n / logsOf(events) : shapeOfCounts(events);
  if (shape === undefined || !Number.isFinite(shape)) return undefined;
  const variance = events.kind === "times" ? 1 / n : varianceOfCounts(events, shape);
  const reach = Math.exp(normalQuantile(1 - (1 - level) / 2) * Math.sqrt(1 / n + variance));
  const rateNow = (n * shape) / end;
  const scale = end / n ** (1 / shape);
  const law = { shape, scale, rateNow, rateLow: rateNow / reach, rateHigh: rateNow * reach };
  if (events.kind === "counts") return law;
  return { ...law, p: steadyChance(logsOf(events), endsWithLast(events) ? n - 1 : n) };
}

function logsOf({ times, end }: { readonly times: readonly number[]; readonly end: number }): number {
  return times.reduce((sum, time) => sum + Math.log(end / time), 0);
}

/** 2 Σ ln(T/t) is chi-square with 2n degrees of freedom where the rate is steady; n of the events that say something. */
function steadyChance(logs: number, n: number): number {
  const above = gammaTail(n, logs);
  return 2 * Math.min(above, 1 - above);
}

interface Counted {
  readonly ends: readonly number[];
  readonly counts: readonly number[];
}

/** Root of Σ nᵢ d ln(eᵢ^β − eᵢ₋₁^β)/dβ − n ln T. */
function shapeOfCounts({ ends, counts }: Counted): number | undefined {
  const slope = (shape: number) => slopeOfCounts(ends, counts, shape);
  const found = findRoot((log) => slope(Math.exp(log)), Math.log(1e-3), Math.log(100), { rootTolerance: 1e-13 });
  return found.kind === "not-bracketed" ? undefined : Math.exp(found.root);
}

function slopeOfCounts(ends: readonly number[], counts: readonly number[], shape: number): number {
  const last = ends.at(-1)!;
  return ends.reduce((sum, to, i) => {
    if (counts[i] === 0) return sum;
    const [low, high] = [(ends[i - 1] ?? 0) / last, to / last];
    const [below, above] = [low ** shape, high ** shape];
    const rising = above * Math.log(high) - (low > 0 ? below * Math.log(low) : 0);
    return sum + (nth(counts, i) * rising) / (above - below);
  }, 0);
}

/** Of ln shape, from the curvature of the likelihood over the shape. */
function varianceOfCounts({ ends, counts }: Counted, shape: number): number {
  const step = 1e-4;
  const [over, under] = [step, -step].map((by) => slopeOfCounts(ends, counts, shape * Math.exp(by)) * shape);
  return Math.max(0, (2 * step) / (under! - over!));
}
