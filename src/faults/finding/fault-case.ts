import { nth, sum } from "#base";

/** One thing that can be done: a look that finds a cause and mends it, or an action after which the thing is tried. */
export interface FaultStep {
  readonly kind: "check" | "action";
  readonly name: string;
  /** Paid whenever it is done. */
  readonly cost: number;
  /** By cause: chance that it ends the trouble, where that is the cause. */
  readonly ends: readonly number[];
  /** Paid besides where it ends the trouble. */
  readonly repair: number;
  /** Number of the cover it lies behind. */
  readonly cover?: number;
}

/** Something that ends nothing but tells causes apart. */
export interface Test {
  readonly name: string;
  readonly cost: number;
  /** By cause: chance of a positive answer. */
  readonly positive: readonly number[];
}

/** A thing that does not work for exactly one reason, and what can be done about it. One unit of cost. */
export interface FaultCase {
  /** By cause, adding up to 1. */
  readonly chances: readonly number[];
  readonly steps: readonly FaultStep[];
  readonly tests: readonly Test[];
  /** Costs of opening each cover, once. */
  readonly covers: readonly number[];
  /** What always helps, at a price: the next pump. */
  readonly fallback?: number;
  /** True where the last cause that is left need not be looked for, only mended. */
  readonly lastIsInferred: boolean;
}

export type Move =
  | { readonly kind: "step"; readonly index: number }
  | { readonly kind: "test"; readonly index: number }
  | { readonly kind: "infer"; readonly index: number }
  | { readonly kind: "fallback" };

/** Chances below this are none. */
export const NOTHING = 1e-14;

/** What is left of the causes where a step did not end the trouble. */
export function leftAfter({ ends }: FaultStep, weights: readonly number[]): number[] {
  return weights.map((weight, c) => weight * (1 - nth(ends, c)));
}

/** What a step costs now: itself for all that may still be, the cover if it is closed, and the repair where it ends the trouble. */
export function priceOf(
  step: FaultStep,
  weights: readonly number[],
  isOpen: (cover: number) => boolean,
  covers: readonly number[],
) {
  const cover = step.cover === undefined || isOpen(step.cover) ? 0 : nth(covers, step.cover);
  const ended = weights.reduce((total, weight, c) => total + weight * nth(step.ends, c), 0);
  return (step.cost + cover) * sum(weights) + ended * step.repair;
}

/** The one cause that is left, or undefined. */
export function onlyCause(weights: readonly number[]): number | undefined {
  const left = weights.flatMap((weight, c) => (weight > NOTHING ? [c] : []));
  return left.length === 1 ? left[0] : undefined;
}
