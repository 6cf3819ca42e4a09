import type { AfterMet, Met, Pattern } from "#kit";
import { lineKeys, turnaroundsNewestFirst } from "../kit/life.ts";
import { lookUp } from "../lookup.ts";
import type { KitState, MetUse } from "../state.ts";
import { COMMON_PRACTICE } from "./common-practice.ts";

/** A first flush that is still to come. */
export interface FlushDue {
  /** Latest time for it [ms] since 1970-01-01 UTC; in the past where it is overdue. */
  readonly by: number;
  /** Counted from here [ms]. */
  readonly from: number;
  /** True where `from` is when it last pumped; else the return, and it stopped pumping before that. */
  readonly isFromStop: boolean;
  /** What binds: the thing met whose time runs out first. */
  readonly first: AfterMet;
  /** What is done about each thing met and not yet flushed out, the first to run out first. */
  readonly all: readonly AfterMet[];
}

/** What is done about a thing met: by the pattern, or by common practice where it says nothing. */
export function afterMeeting(pattern: Pattern, what: Met): AfterMet {
  return pattern.afterUse?.met.find((one) => one.what === what) ?? COMMON_PRACTICE[what];
}

/**
 * When a kit that met salt, oil, sewage or fuel must first be flushed: the time its pattern gives from the last pumping,
 * or from its return where nobody wrote down when it stopped.
 *
 * @param kit - as its log tells it
 * @param pattern - the version it is built to
 * @returns undefined where it met nothing, or was flushed since
 */
export function flushDue(kit: KitState, pattern: Pattern): FlushDue | undefined {
  const due = (kit.met ?? []).flatMap((use) => stillDue(kit, pattern, use)).toSorted((one, other) => one.by - other.by);
  const [first] = due;
  if (!first) return undefined;
  const all = due.filter(({ met }, at) => due.findIndex((one) => one.met.what === met.what) === at);
  const { by, from, isFromStop } = first;
  return { by, from, isFromStop, first: first.met, all: all.map(({ met }) => met) };
}

interface OneDue extends Pick<FlushDue, "by" | "from" | "isFromStop"> {
  readonly met: AfterMet;
}

function stillDue(kit: KitState, pattern: Pattern, use: MetUse): readonly OneDue[] {
  if (use.flushed) return [];
  const from = Date.parse(use.stopped ?? use.at);
  return use.what
    .map((what) => afterMeeting(pattern, what))
    .filter((met) => !isFlushed(kit, pattern, use, met))
    .map((met) => ({ met, from, isFromStop: use.stopped !== undefined, by: from + 1000 * met.flushWithin }));
}

/** Flushed at the steps of a turnaround that the pattern names, every one seen done since. */
function isFlushed(kit: KitState, pattern: Pattern, use: MetUse, { flushedBy }: AfterMet): boolean {
  const { steps } = lookUp(pattern);
  const keys = flushedBy.flatMap((id) => lineKeys(steps.get(id) ?? { id, checks: [] }));
  if (keys.length === 0) return false;
  const since = Date.parse(use.at);
  const known = [...turnaroundsNewestFirst(kit), ...(kit.otherTurnarounds ?? [])];
  return known.some(({ answers }) =>
    keys.every((key) => answers[key]?.answer === "seen" && Date.parse(answers[key].mark.at) >= since),
  );
}
