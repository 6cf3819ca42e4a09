// One line of the report: a figure, its interval, what is wanted of it.
import { shareOf } from "./intervals.ts";
import type { Moment, Watched } from "./watching.ts";

export interface Wanted {
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Below, and not at. */
  readonly below?: number;
}

export interface Row {
  readonly group: string;
  readonly name: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** "12 of 3,400 answers, 90 casualties". */
  readonly counts: string;
  readonly wanted?: Wanted;
}

/** Whether a row keeps what is wanted of it; nothing to judge by is not kept. Undefined where nothing is wanted. */
export function isKept({ value, wanted }: Row): boolean | undefined {
  if (wanted === undefined) return undefined;
  const {
    atLeast = Number.NEGATIVE_INFINITY,
    atMost = Number.POSITIVE_INFINITY,
    below = Number.POSITIVE_INFINITY,
  } = wanted;
  return value >= atLeast && value <= atMost && value < below;
}

/** True or false where a moment counts, undefined where it does not. */
export type Judge = (moment: Moment, watched: Watched) => boolean | undefined;

/** The share of answers that hit, of those that count. */
export function shareRow(group: string, name: string, all: readonly Watched[], judge: Judge, wanted?: Wanted): Row {
  const tallies = all.map((watched) => {
    const judged = watched.moments.map((moment) => judge(moment, watched)).filter((one) => one !== undefined);
    return { hits: judged.filter(Boolean).length, of: judged.length };
  });
  const { share, low, high, hits, of, casualties } = shareOf(tallies);
  const counts = `${hits} of ${of} answers, ${casualties} casualties`;
  return { group, name, value: share, low, high, counts, ...(wanted && { wanted }) };
}

/** The share of casualties that hit, of those that count. */
export function casualtyRow(
  group: string,
  name: string,
  all: readonly Watched[],
  judge: (watched: Watched) => boolean | undefined,
  wanted?: Wanted,
): Row {
  const judged = all.map(judge).filter((one) => one !== undefined);
  const { share, low, high, hits, of } = shareOf(judged.map((hit) => ({ hits: Number(hit), of: 1 })));
  return { group, name, value: share, low, high, counts: `${hits} of ${of} casualties`, ...(wanted && { wanted }) };
}
