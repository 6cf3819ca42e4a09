import { parseDate } from "#base";
import type { Words } from "#words";
import { itemNamed, modeNamed, type Pattern } from "#kit";
import { findingsByAge, isRemedied, type AgedFinding, type Finding, type KitState } from "#readiness";

type LineWords = Words["kitLine"];

/** An open finding with what it concerns by name, as lists show it. */
export type OpenFinding = AgedFinding & NamedFinding;

/** Item and mode of a finding in the pattern's words. */
export interface NamedFinding {
  readonly item: string;
  /** Names the item too. */
  readonly mode: string;
}

/** Every finding not closed, oldest first, by name. */
export function listOpen(
  kits: readonly KitState[],
  patterns: ReadonlyMap<string, Pattern>,
  today: string,
  words: LineWords,
): readonly OpenFinding[] {
  const aged = findingsByAge(kits, today);
  return aged.map((one) => ({ ...one, ...nameFinding(one.finding, patterns.get(one.kit.pattern), words) }));
}

/** Item and mode by name; the note where the pattern has no such mode. */
export function nameFinding(finding: Finding, pattern: Pattern | undefined, words: LineWords): NamedFinding {
  const item = (pattern && itemNamed(pattern, finding.item)?.name) ?? finding.item;
  const mode = pattern && modeNamed(pattern, finding.mode)?.name;
  return { item, mode: mode ?? `${item}: ${finding.note ?? words.somethingElse()}` };
}

/** Open findings of one kit, oldest first. */
export interface KitFindings {
  readonly kit: KitState;
  readonly findings: readonly OpenFinding[];
}

/** Open findings under their kits, the kit with the oldest one first. */
export function groupByKit(open: readonly OpenFinding[]): readonly KitFindings[] {
  const kits = [...new Set(open.map((one) => one.kit))];
  return kits.map((kit) => ({ kit, findings: open.filter((one) => one.kit === kit) }));
}

/** Age in words. */
export function sayAge(days: number, words: LineWords): string {
  return words.days({ count: days });
}

/** Where a finding is on its way to being closed. */
export type Progress = "needs-remedy" | "needs-proof" | "lived-with" | "closed";

/** What has been done about a finding, and so what comes next. */
export function progressOf(finding: Finding, today: string): Progress {
  if (finding.closed) return "closed";
  if (finding.livedWith && parseDate(finding.livedWith.until) >= today) return "lived-with";
  return isRemedied(finding) ? "needs-proof" : "needs-remedy";
}

/** Progress in words, naming what comes next. */
export function sayProgress(progress: Progress, words: LineWords): string {
  return words[PROGRESS[progress]]();
}

const PROGRESS = {
  "needs-remedy": "needsRemedy",
  "needs-proof": "needsProof",
  "lived-with": "livedWith",
  closed: "closed",
} as const satisfies Readonly<Record<Progress, keyof LineWords>>;
