import { daysBetween, dayWritten, type PlainDate } from "#base";
import { modeNamed, startCheckOf, stepOfCheck, type Check, type Pattern } from "#kit";
import type { Finding, KitState } from "../state.ts";

/**
 * The checks that prove a finding mended: every check that finds its mode; for a mode the pattern does not know, the
 * check at which it was raised, or failing that every check on its item.
 */
export function provingChecks(finding: Finding, pattern: Pattern): readonly Check[] {
  const finders = pattern.checks.filter((check) => check.finds.includes(finding.mode));
  if (finders.length > 0) return finders;
  const raisedAt = pattern.checks.filter((check) => check.id === finding.check);
  return raisedAt.length > 0 ? raisedAt : pattern.checks.filter((check) => check.item === finding.item);
}

/**
 * The checks that a person makes again to close a finding: those that prove it, and those its mode names beside them,
 * such as a run under fuel after a leak was mended. A run that its mode names is one that was seen to start: the check of
 * the start belongs to it.
 */
export function proofWanted(finding: Finding, pattern: Pattern): readonly Check[] {
  const named = modeNamed(pattern, finding.mode)?.provedBy ?? [];
  const beside = [...named, ...startsOf(named, pattern)];
  const proving = provingChecks(finding, pattern);
  return [...proving, ...pattern.checks.filter((check) => beside.includes(check.id) && !proving.includes(check))];
}

/** The check of the start, where one of these checks is made in the run after it. */
function startsOf(named: readonly string[], pattern: Pattern): readonly string[] {
  const start = startCheckOf(pattern);
  const from = start && stepOfCheck(pattern, start.id)?.line;
  if (start === undefined || from === undefined) return [];
  const running = pattern.stages.filter(({ id }) => id === "run").flatMap((stage) => stage.steps);
  const isAfter = running.some(({ line, checks }) => line > from && checks.some((id) => named.includes(id)));
  return isAfter ? [start.id] : [];
}

/** An open finding of some kit, with its age. */
export interface AgedFinding {
  readonly kit: KitState;
  readonly finding: Finding;
  /** Whole days since it was raised. */
  readonly days: number;
}

/** Open findings of all kits, the oldest first. */
export function findingsByAge(kits: readonly KitState[], today: PlainDate): readonly AgedFinding[] {
  return kits
    .flatMap((kit) => openFindings(kit).map((finding) => ({ kit, finding, days: ageOf(finding, today) })))
    .sort((one, other) => other.days - one.days || (one.finding.id < other.finding.id ? -1 : 1));
}

/** The findings of a kit that no proof has closed. */
export function openFindings(kit: KitState): readonly Finding[] {
  return kit.findings.filter((finding) => finding.closed === undefined);
}

/** True where an open finding keeps the kit from going. */
export function isGrounding(finding: Finding): boolean {
  return finding.closed === undefined && finding.effect === "grounds";
}

/** What grounds a kit is never lived with: it is mended or replaced, or the kit stays grounded. */
export function mayBeLivedWith(finding: Pick<Finding, "effect">): boolean {
  return finding.effect !== "grounds";
}

/** True where something was done about a finding that a proof can bear out; living with it is not that. */
export function isRemedied(finding: Pick<Finding, "remedies">): boolean {
  return finding.remedies.some(({ remedy }) => remedy.how !== "lived-with");
}

function ageOf(finding: Finding, today: PlainDate): number {
  return Math.max(0, daysBetween(dayWritten(finding.raised.at), today));
}
