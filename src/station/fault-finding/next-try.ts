import { findFault, type FaultCase } from "#faults";
import type { Trouble, TroubleCause, TroubleTry } from "#kit";

/** Where the kit stands: at sea the clock is the sinking boat's, on the bench it is only ours. */
export type Where = "boat" | "bench";

/** A cause and how likely it is now, after what did not help. */
export interface Likely {
  readonly cause: TroubleCause;
  readonly chance: number;
}

export interface FaultAdvice {
  readonly next:
    | { readonly kind: "try"; readonly try: TroubleTry }
    /** Leave it: the next pump gives water sooner than anything that is left to try. */
    | { readonly kind: "next-pump"; readonly minutes: number }
    /** On the bench: nothing is left that could help. */
    | { readonly kind: "nothing-left" };
  /** Minutes until it works or is left, to be expected, on the best way. */
  readonly minutes: number;
  /** Likeliest first. */
  readonly causes: readonly Likely[];
  /** Findings that bear on the chances; the rest is judgement. */
  readonly findings: number;
}

/** Minutes for which a bench is kept before the kit is left to a workshop. */
const BENCH = 120;

/**
 * The next thing to do about a trouble, after some that did not help.
 *
 * @param trouble - of the kit's pattern
 * @param tried - ids of what was tried without help, in order
 * @param found - findings so far by mode, on kits of this pattern
 * @param where - at sea the next pump is the way out, on the bench the workshop
 * @returns what to do, and what it may be by now
 */
export function nextTry(
  trouble: Trouble,
  tried: readonly string[],
  found: ReadonlyMap<string, number>,
  where: Where,
): FaultAdvice {
  const before = weightsOf(trouble, found);
  const weights = tried.reduce((left, id) => afterNoHelp(trouble, left, id), before);
  const open = trouble.tries.filter(({ id }) => !tried.includes(id));
  const causes = likelyOf(trouble, weights);
  const findings = trouble.causes.reduce((sum, { mode }) => sum + (found.get(mode ?? "") ?? 0), 0);
  const plan = findFault(caseOf(trouble, open, causes, where));
  const more = { minutes: plan.expectedCost, causes: causes.toSorted((a, b) => b.chance - a.chance), findings };
  const step = plan.next.kind === "step" ? open[plan.next.index] : undefined;
  if (step) return { next: { kind: "try", try: step }, ...more };
  if (where === "bench") return { next: { kind: "nothing-left" }, ...more };
  return { next: { kind: "next-pump", minutes: trouble.nextPump }, ...more };
}

/** What it may have been, where a try ended the trouble: likeliest first. */
export function endedBy(
  trouble: Trouble,
  tried: readonly string[],
  ended: string,
  found: ReadonlyMap<string, number>,
): readonly Likely[] {
  const weights = tried.reduce((left, id) => afterNoHelp(trouble, left, id), weightsOf(trouble, found));
  const ends = trouble.tries.find(({ id }) => id === ended)?.ends ?? {};
  const after = weights.map((weight, i) => weight * (ends[trouble.causes[i]!.id] ?? 0));
  return likelyOf(trouble, after)
    .filter(({ chance }) => chance > 0)
    .toSorted((a, b) => b.chance - a.chance);
}

/** Judgement counted as so many findings, and the findings themselves. */
function weightsOf({ causes }: Trouble, found: ReadonlyMap<string, number>): readonly number[] {
  return causes.map(({ weight, mode }) => weight + (mode === undefined ? 0 : (found.get(mode) ?? 0)));
}

function afterNoHelp({ causes, tries }: Trouble, weights: readonly number[], id: string): readonly number[] {
  const ends = tries.find((one) => one.id === id)?.ends ?? {};
  return weights.map((weight, i) => weight * (1 - (ends[causes[i]!.id] ?? 0)));
}

function likelyOf({ causes }: Trouble, weights: readonly number[]): readonly Likely[] {
  const whole = weights.reduce((sum, one) => sum + one, 0);
  const even = 1 / causes.length;
  return causes.map((cause, i) => ({ cause, chance: whole > 0 ? weights[i]! / whole : even }));
}

function caseOf(trouble: Trouble, open: readonly TroubleTry[], causes: readonly Likely[], where: Where): FaultCase {
  return {
    chances: causes.map(({ chance }) => chance),
    steps: open.map(({ id, minutes, ends }) => {
      const byCause = causes.map(({ cause }) => ends[cause.id] ?? 0);
      return { kind: "action", name: id, cost: minutes, ends: byCause, repair: 0 };
    }),
    tests: [],
    covers: [],
    fallback: where === "boat" ? trouble.nextPump : BENCH,
    lastIsInferred: false,
  };
}
