import { isSeenClosed } from "#kit";
import {
  compareVisit,
  drawKits,
  drawLines,
  linesToCompare,
  visitKey,
  type DrawnLine,
  type KitState,
  type Visit,
  type VisitedLine,
  type VisitLog,
} from "#readiness";
import { clopperPearson, cohensKappa, wilson, type Interval, type Kappa } from "#reliability";

/** A share that was counted, with what it may really be. */
export interface CountedShare {
  readonly count: number;
  readonly of: number;
  /** 95 % [1]. */
  readonly interval: Interval;
}

/** What a visit showed. Only for a visit that has ended: it tells what the keeper wrote. */
export interface VisitResult {
  readonly lines: readonly VisitedLine[];
  /** Lines on which both say the same; absent where nothing could be compared. */
  readonly agreed?: CountedShare;
  readonly kappa: Kappa;
  /** Lines that the assessor found wrong, of those looked at: of the kits drawn; absent where none was looked at. */
  readonly wrong?: CountedShare;
  readonly missed: readonly VisitedLine[];
  readonly falseAlarms: readonly VisitedLine[];
  readonly readOtherwise: readonly VisitedLine[];
  readonly kits: readonly VisitedKitResult[];
  /** How the drawn sample stands to the seed: the same, another, or the log is not at hand to tell. */
  readonly drawnAgain: "same" | "other" | "not-known";
}

/** One kit of a visit. */
export interface VisitedKitResult {
  readonly id: string;
  readonly kit: KitState | undefined;
  /** With which it was compared. */
  readonly turnaround: string;
  readonly lines: readonly VisitedLine[];
  /** Lines that could be drawn in it; absent where the log is not at hand to tell. */
  readonly drawnFrom?: number;
  /** So many of them both looked at, and could be compared. */
  readonly compared: number;
  /** No turnaround of it was opened since the visit began, though something behind its seal was drawn and looked at. */
  readonly isNotTurnedRound: boolean;
}

/**
 * Compares a visit that has ended with what keepers wrote.
 *
 * @param visit - ended
 * @param log - kits and patterns
 * @source agreement: Wilson's interval; wrong of those looked at: Clopper and Pearson's; `cohensKappa`
 */
export function visitResult(visit: Visit, log: VisitLog): VisitResult {
  const lines = compareVisit(visit, log);
  const count = (outcome: VisitedLine["outcome"]) => lines.filter((line) => line.outcome === outcome).length;
  const table = [
    [count("both-right"), count("missed")],
    [count("false-alarm"), count("both-wrong")],
  ];
  const of = lines.filter(isCompared).length;
  const same = count("both-right") + count("both-wrong");
  const looked = lines.filter(({ seen }) => seen !== undefined && seen.answer !== "not-possible");
  const bad = looked.filter(({ seen }) => seen?.answer === "wrong").length;
  return {
    lines,
    ...(of > 0 && { agreed: { count: same, of, interval: wilson(same, of, 0.95) } }),
    kappa: cohensKappa(table),
    ...(looked.length > 0 && {
      wrong: { count: bad, of: looked.length, interval: clopperPearson(bad, looked.length, 0.95) },
    }),
    missed: lines.filter(({ outcome }) => outcome === "missed"),
    falseAlarms: lines.filter(({ outcome }) => outcome === "false-alarm"),
    readOtherwise: lines.filter(({ isReadOtherwise }) => isReadOtherwise),
    kits: kitsOf(visit, lines, log),
    drawnAgain: drawnAgain(visit, log),
  };
}

function kitsOf(visit: Visit, lines: readonly VisitedLine[], log: VisitLog): readonly VisitedKitResult[] {
  const since = Date.parse(visit.begun.at);
  return visit.begun.of.flatMap((of) => {
    const { kit: id, turnaround } = of;
    if (of.lines === undefined) return [];
    const from = couldBeDrawn(of, log);
    const own = lines.filter(({ kit }) => kit === id);
    const kit = own[0]?.ofKit;
    const all = kit ? [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])] : [];
    const isOpened = all.some(({ opened }) => Date.parse(opened.at) >= since);
    const isNotTurnedRound = own.some(isLookedInto) && !isOpened;
    const compared = own.filter(isCompared).length;
    return [{ id, kit, turnaround, lines: own, compared, ...(from && { drawnFrom: from.length }), isNotTurnedRound }];
  });
}

const COMPARED: ReadonlySet<VisitedLine["outcome"]> = new Set(["both-right", "both-wrong", "missed", "false-alarm"]);

/** Both looked, and each said right or wrong. */
function isCompared({ outcome }: VisitedLine): boolean {
  return COMPARED.has(outcome);
}

/** True where the kit had to be open for what was looked at; where the pattern is not at hand, it may have been. */
function isLookedInto({ seen, pattern, step, check }: VisitedLine): boolean {
  if (seen === undefined || seen.answer === "not-possible") return false;
  return pattern === undefined || !isSeenClosed(pattern, step, check);
}

/** Draws the sample anew from the seed, and holds it against the one that was written. */
export function drawnAgain(visit: Visit, log: VisitLog): VisitResult["drawnAgain"] {
  const from = visit.begun.of.flatMap((of) => {
    const lines = couldBeDrawn(of, log);
    return lines ? [{ kit: { id: of.kit }, lines }] : [];
  });
  if (from.length < visit.begun.of.length) return "not-known";
  const written = visit.begun.of.flatMap(({ kit, lines = [] }) => lines.map((line) => visitKey({ kit, ...line })));
  const drawn = drawKits(from, visit.begun.seed, visit.begun.kits);
  const again = drawLines(drawn, visit.begun.seed, written.length).map(visitKey);
  return written.join(" ") === again.join(" ") ? "same" : "other";
}

/** Lines of one kit that the sample was drawn from; undefined where its turnaround or pattern is not at hand. */
function couldBeDrawn(
  { kit: id, turnaround, pattern: key }: Visit["begun"]["of"][number],
  { kits, retired = [], patterns }: VisitLog,
): readonly DrawnLine[] | undefined {
  const closed = [...kits, ...retired].find((one) => one.id === id)?.turnarounds.find((one) => one.id === turnaround);
  const pattern = patterns.get(key);
  return closed && pattern && linesToCompare(id, closed, pattern);
}
