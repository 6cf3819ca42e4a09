import { canonicalText } from "#log";
import { checkNamed, stepNamed, type Check, type Pattern, type Step } from "#kit";
import type { StepAnswer } from "../kinds/kit-parts.ts";
import type { VisitedKit } from "../kinds/visit-parts.ts";
import type { Finding, KitState, Mark, Turnaround } from "../state.ts";
import { visitKey, type DrawnLine, type Reexamined, type Visit } from "./visit-state.ts";

/** How what the assessor saw stands to what the keeper wrote. `not-at-hand`: the keeper's line is not on this device. */
export type VisitOutcome =
  "both-right" | "both-wrong" | "missed" | "false-alarm" | "not-possible" | "left" | "not-at-hand";

/** One line of a visit, with both readings. */
export interface VisitedLine extends DrawnLine {
  readonly outcome: VisitOutcome;
  readonly ofKit: KitState | undefined;
  readonly pattern: Pattern | undefined;
  readonly atStep: Step | undefined;
  readonly ofCheck: Check | undefined;
  /** What the keeper wrote, and whether it still stood as wrong when the visit began. */
  readonly wrote?: StepAnswer & { readonly mark: Mark; readonly stoodWrong: boolean };
  readonly seen?: Reexamined;
  /** The finding that the assessor raised or met. */
  readonly finding?: Finding;
  /** Both found it right, and read another count, date or number. */
  readonly isReadOtherwise: boolean;
}

/** What the lines of a visit are compared by. */
export interface VisitLog {
  readonly kits: readonly KitState[];
  readonly retired?: readonly KitState[];
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/** Every line that was drawn, in the order of kits and lines. */
export function drawnIn({ begun }: Visit): readonly DrawnLine[] {
  return begun.of.flatMap(({ kit, lines = [] }) => lines.map((line) => ({ kit, ...line })));
}

/**
 * Holds what an assessor saw against what the keeper wrote in the last turnaround before. A line stood as wrong where a
 * finding that was raised at it was open when the visit began, or it was answered wrong and nothing came of it; one that
 * was put right and proved stood as right.
 *
 * @param visit - its lines, whether it has ended or not: only who may see the keeper's answers calls this
 * @returns one for each line that was drawn
 */
export function compareVisit(visit: Visit, log: VisitLog): readonly VisitedLine[] {
  const kits = new Map([...log.kits, ...(log.retired ?? [])].map((kit) => [kit.id, kit]));
  return visit.begun.of.flatMap((of) => {
    const kit = kits.get(of.kit);
    const pattern = log.patterns.get(of.pattern);
    return (of.lines ?? []).map((line) => compared(visit, { of, kit, pattern }, { kit: of.kit, ...line }));
  });
}

interface Of {
  readonly of: VisitedKit;
  readonly kit: KitState | undefined;
  readonly pattern: Pattern | undefined;
}

function compared(visit: Visit, { of, kit, pattern }: Of, line: DrawnLine): VisitedLine {
  const seen = visit.seen[visitKey(line)];
  const turnaround = kit?.turnarounds.find(({ id }) => id === of.turnaround);
  const wrote = kit && turnaround && wroteAt(kit, turnaround, line, visit.begun.at);
  const finding = seen?.finding === undefined ? undefined : kit?.findings.find(({ id }) => id === seen.finding);
  return {
    ...line,
    outcome: outcomeOf(seen, wrote),
    ofKit: kit,
    pattern,
    atStep: pattern && stepNamed(pattern, line.step),
    ofCheck: pattern && checkNamed(pattern, line.check),
    ...(wrote && { wrote }),
    ...(seen && { seen }),
    ...(finding && { finding }),
    isReadOtherwise: readsOtherwise(seen, wrote),
  };
}

function outcomeOf(seen: Reexamined | undefined, wrote: VisitedLine["wrote"]): VisitOutcome {
  if (!seen) return "left";
  if (seen.answer === "not-possible") return "not-possible";
  if (!wrote) return "not-at-hand";
  if (seen.answer === "wrong") return wrote.stoodWrong ? "both-wrong" : "missed";
  return wrote.stoodWrong ? "false-alarm" : "both-right";
}

function wroteAt(kit: KitState, turnaround: Turnaround, line: DrawnLine, at: string): VisitedLine["wrote"] {
  const given = turnaround.answers[`${line.step}/${line.check}`];
  if (given === undefined) return undefined;
  const closed = turnaround.closed?.at ?? turnaround.opened.at;
  const own = kit.findings.filter(
    (one) =>
      one.check === line.check &&
      isAfter(at, one.raised.at) &&
      (one.turnaround === turnaround.id || (one.turnaround === undefined && !isAfter(closed, one.raised.at))),
  );
  const isOpen = own.some((one) => one.closed === undefined || isAfter(one.closed.at, at));
  return { ...given, stoodWrong: isOpen || (given.answer === "wrong" && own.length === 0) };
}

function isAfter(one: string, other: string): boolean {
  return Date.parse(one) > Date.parse(other);
}

/** Counts, dates and numbers are the same or not, however a device keeps them; a quantity measured twice never is. */
function readsOtherwise(seen: Reexamined | undefined, wrote: VisitedLine["wrote"]): boolean {
  const [one, other] = [seen?.value, wrote?.value];
  if (seen?.answer !== "seen" || wrote?.answer !== "seen" || !one || !other || one.kind !== other.kind) return false;
  return one.kind !== "quantity" && canonicalText(one) !== canonicalText(other);
}
