import { CAUTIONS_FOR, tryHazards, type Hazard, type Pattern, type Step, type Trouble } from "#kit";
import { rowsOf, weigh, type CautionRow } from "#web/parts/caution-weight.ts";

/** Where a try is done. */
export interface TryPlace {
  readonly pattern: Pattern;
  readonly trouble: Trouble;
  /** Ids of the tries before it, whose cautions were read. */
  readonly tried: readonly string[];
  /** The line of a turnaround that one came from, whose dangers are there still. */
  readonly from: Step | undefined;
}

interface Act {
  readonly hazards: readonly Hazard[];
}

/**
 * The cautions before a try: of what it does, of what its start brings, and of the line one came from. Gravest first,
 * whole where a danger begins and by name where it goes on. A flywheel that the line leaves bare stands before all.
 */
export function tryRows(place: TryPlace, one: Act): readonly CautionRow[] {
  const { pattern, trouble, tried, from } = place;
  const before = trouble.tries.filter(({ id }) => tried.includes(id));
  const read = new Set([...before.flatMap((each) => cautionsOf(tryHazards(pattern, each))), ...ifAny(before, from)]);
  return placed([...cautionsOf(tryHazards(pattern, one)), ...(from?.cautions ?? [])], read, from);
}

/** The cautions before a look at the sign: of what it does, and of the line one came from. It starts nothing. */
export function lookRows({ from }: TryPlace, look: Act): readonly CautionRow[] {
  return placed([...cautionsOf(look.hazards), ...(from?.cautions ?? [])], new Set(), from);
}

/** Of the line one came from: they were read at the first try, so before any later one. */
function ifAny(before: readonly unknown[], from: Step | undefined): readonly string[] {
  return before.length > 0 ? (from?.cautions ?? []) : [];
}

function placed(cautions: readonly string[], read: ReadonlySet<string>, from: Step | undefined) {
  const bare: ReadonlySet<string> = new Set(from?.hazards.includes(BARE) ? CAUTIONS_FOR[BARE] : []);
  const rest = [...new Set(cautions)].filter((id) => !bare.has(id));
  const first = [...bare].map((id): CautionRow => ({ how: read.has(id) ? "begun" : "whole", ids: [id] }));
  return [...first, ...rowsOf(weigh(rest, read))];
}

const BARE: Hazard = "unguarded-rotation";

function cautionsOf(hazards: readonly Hazard[]): readonly string[] {
  return hazards.flatMap((hazard) => CAUTIONS_FOR[hazard]);
}
