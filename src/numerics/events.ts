import { findRoot } from "./root.ts";
import type { Interpolant } from "./ode-contract.ts";

/** A quantity whose passage through zero is an event. */
export interface OdeEvent {
  readonly name: string;
  value(t: number, y: Float64Array): number;
  readonly direction: "rising" | "falling" | "either";
  /** The run stops at the event. */
  readonly terminal: boolean;
  /** Values this near zero have no sign: an event just met is not met again before it has left them. Default 1e-10. */
  readonly dead?: number;
}

/** An event met. */
export interface Crossing {
  readonly event: OdeEvent;
  readonly at: number;
  readonly y: Float64Array;
  /** The value went from below to above. */
  readonly rising: boolean;
}

/** One accepted step as the search sees it. */
export interface SearchedStep {
  readonly from: number;
  readonly length: number;
  readonly end: number;
  readonly interpolant: Interpolant;
  readonly start: Float64Array;
  readonly next: Float64Array;
}

/** The side of zero each event's value stands on at the start: -1, 0 (too near to say) or 1. */
export function beginCrossings(events: readonly OdeEvent[], t: number, y: Float64Array): Int8Array {
  return Int8Array.from(events, (event) => sideOf(event, event.value(t, y)));
}

function sideOf(event: OdeEvent, value: number): -1 | 0 | 1 {
  if (!(Math.abs(value) > (event.dead ?? 1e-10))) return 0;
  return value > 0 ? 1 : -1;
}

/**
 * Finds where events happen within one step, on the step's interpolant.
 *
 * @param signs - last known side of each event; brought up to date here, as far as the step is used
 * @returns crossings in order of time; nothing after the first terminal one counts
 */
export function findCrossings(events: readonly OdeEvent[], signs: Int8Array, step: SearchedStep): Crossing[] {
  const found: Crossing[] = [];
  for (let k = 0; k < events.length; k += 1) {
    const event = events[k]!;
    const before = signs[k]!;
    const after = sideOf(event, event.value(step.end, step.next));
    if (after === 0) continue;
    signs[k] = after;
    if (before !== 0 && before !== after && wants(event, after)) found.push(locate(event, before, step));
  }
  return found.sort((a, b) => a.at - b.at);
}

/** Where a run that stops there could not see the event happen: its value has no sign left to lose. */
export function isMetAt(event: OdeEvent, t: number, y: Float64Array): boolean {
  return sideOf(event, event.value(t, y)) === 0;
}

function wants(event: OdeEvent, after: -1 | 0 | 1): boolean {
  return event.direction === "either" || (event.direction === "rising") === after > 0;
}

function locate(event: OdeEvent, before: number, step: SearchedStep): Crossing {
  const y = new Float64Array(step.start.length);
  const valueAt = (theta: number): number => {
    step.interpolant(theta, y);
    return event.value(step.from + theta * step.length, y);
  };
  const outcome = findRoot((theta) => before * valueAt(theta), 0, 1, { rootTolerance: 1e-15 });
  const theta = outcome.kind === "not-bracketed" ? 0 : outcome.root;
  step.interpolant(theta, y);
  return { event, at: Math.min(step.end, step.from + theta * step.length), y, rising: before < 0 };
}
