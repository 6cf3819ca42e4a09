import type { Check, Pattern, StageId, Step } from "#kit";
import { drillsOn } from "../drill/drill-now.ts";
import type { KitState, Turnaround } from "../state.ts";
import type { DrawnLine } from "./visit-state.ts";

/** A kit at which something can be looked at again. */
export interface Comparable {
  readonly kit: KitState;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
  /** In the pattern's order, at least one. */
  readonly lines: readonly DrawnLine[];
}

/** A kit that is not drawn, and why. */
export interface NotComparable {
  readonly kit: KitState;
  readonly because: "away" | "open" | "drill" | "nothing-written" | "no-pattern";
}

/** All that a visit can draw from. */
export interface Frame {
  readonly kits: readonly Comparable[];
  readonly left: readonly NotComparable[];
}

/** Stages whose lines ask how the kit is; later ones ask what was done with it. */
const LOOKED_AT: readonly StageId[] = ["open", "examine"];
/** Kinds of check that can be made again by looking and reading. */
const LOOKS: ReadonlySet<Check["kind"]> = new Set(["look", "measure", "count", "match", "date"]);

/**
 * What a visit to these places can draw from: kits that are here and closed, and of each the looks and readings that its
 * keeper answered in the last closed turnaround. Runs, waits, primes, the seal on record and lines that are not part of
 * every turnaround are left out.
 *
 * @param kits - of the station
 * @param patterns - by "id@version"
 * @param places - ids
 */
export function frameOf(
  kits: readonly KitState[],
  patterns: ReadonlyMap<string, Pattern>,
  places: readonly string[],
): Frame {
  const here = kits.filter(({ place, retired }) => places.includes(place) && !retired);
  const read = here.toSorted((one, other) => (one.id < other.id ? -1 : 1)).map((kit) => comparable(kit, patterns));
  return {
    kits: read.flatMap((one) => ("because" in one ? [] : [one])),
    left: read.flatMap((one) => ("because" in one ? [one] : [])),
  };
}

function comparable(kit: KitState, patterns: ReadonlyMap<string, Pattern>): Comparable | NotComparable {
  if (kit.custody.kind === "away") return { kit, because: "away" };
  if (drillsOn(kit).length > 0) return { kit, because: "drill" };
  if (kit.turnaround) return { kit, because: "open" };
  const turnaround = kit.turnarounds.findLast(({ closed, drill }) => closed?.how !== "set-aside" && !drill);
  if (!turnaround) return { kit, because: "nothing-written" };
  const pattern = patterns.get(turnaround.pattern ?? kit.pattern);
  if (!pattern) return { kit, because: "no-pattern" };
  const lines = linesToCompare(kit.id, turnaround, pattern);
  return lines.length === 0 ? { kit, because: "nothing-written" } : { kit, turnaround, pattern, lines };
}

/** Checks of a turnaround that can be made again, in the pattern's order. */
export function linesToCompare(kit: string, { answers }: Turnaround, pattern: Pattern): readonly DrawnLine[] {
  const checks = new Map(pattern.checks.map((check) => [check.id, check]));
  const steps = pattern.stages.filter(({ id }) => LOOKED_AT.includes(id)).flatMap((stage) => stage.steps);
  return steps.filter(isPlain).flatMap(({ id: step, checks: asked }) =>
    asked.flatMap((id) => {
      const check = checks.get(id);
      const given = answers[`${step}/${id}`];
      const isGiven = given !== undefined && given.answer !== "not-possible";
      return check && isGiven && isLook(check) ? [{ kit, step, check: id }] : [];
    }),
  );
}

function isPlain({ timer, optional, after }: Step): boolean {
  return timer === undefined && !optional && after === undefined;
}

function isLook(check: Check): boolean {
  if (check.kind === "match" && check.against !== undefined) return false;
  return LOOKS.has(check.kind) && !(check.kind === "measure" && check.once === true);
}
