import { daysBetween, dayWritten } from "#base";
import type { Effect, Pattern } from "#kit";
import type { Finding, KitState } from "#readiness";

/** An open finding with what it concerns, as lists show it. */
export interface OpenFinding {
  readonly kit: KitState;
  readonly finding: Finding;
  /** Whole days since it was raised. */
  readonly days: number;
  readonly item: string;
  readonly mode: string;
}

/** Every finding not closed, oldest first. */
export function listOpen(
  kits: readonly KitState[],
  patterns: ReadonlyMap<string, Pattern>,
  today: string,
): readonly OpenFinding[] {
  const open = kits.flatMap((kit) =>
    kit.findings.filter((one) => !one.closed).map((one) => describe(kit, one, patterns.get(kit.pattern), today)),
  );
  return open.sort((a, b) => Date.parse(a.finding.raised.at) - Date.parse(b.finding.raised.at));
}

/** A finding with its item and mode by name. */
export function describe(kit: KitState, finding: Finding, pattern: Pattern | undefined, today: string): OpenFinding {
  const item = pattern?.items.find((one) => one.id === finding.item)?.name ?? finding.item;
  const mode = pattern?.modes.find((one) => one.id === finding.mode)?.name ?? finding.note ?? "Something else";
  return { kit, finding, item, mode, days: Math.max(0, daysBetween(dayWritten(finding.raised.at), today)) };
}

/** Open findings under their kits, the kit with the oldest one first. */
export function groupByKit(
  open: readonly OpenFinding[],
): readonly { readonly kit: KitState; readonly findings: readonly OpenFinding[] }[] {
  const kits = [...new Set(open.map((one) => one.kit))];
  return kits.map((kit) => ({ kit, findings: open.filter((one) => one.kit === kit) }));
}

/** Age in words. */
export function sayAge(days: number): string {
  if (days === 0) return "today";
  return days === 1 ? "1 day" : `${days} days`;
}

/** Where a finding is on its way to being closed. */
export type Progress = "needs-remedy" | "needs-proof" | "lived-with" | "closed";

/** What has been done about a finding, and so what comes next. */
export function progressOf(finding: Finding, today: string): Progress {
  if (finding.closed) return "closed";
  if (finding.livedWith && finding.livedWith.until >= today) return "lived-with";
  const last = finding.remedies.at(-1)?.remedy;
  return last && last.how !== "lived-with" ? "needs-proof" : "needs-remedy";
}

/** Progress in words, naming what comes next. */
export function sayProgress(progress: Progress): string {
  const words: Readonly<Record<Progress, string>> = {
    "needs-remedy": "nothing done yet",
    "needs-proof": "remedy made, not proved",
    "lived-with": "lived with",
    closed: "closed",
  };
  return words[progress];
}

/** Effects gravest first, for lists that put what holds a kit on top. */
export const EFFECTS: readonly Effect[] = ["grounds", "limits", "notes"];
