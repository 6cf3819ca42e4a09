import { checkNamed, checksFinding, type Mode, type Pattern } from "#kit";
import type { Finding } from "#readiness";
import { countedOnce, type FindingRead } from "./findings-read.ts";

/** How one mode was found. */
export interface ModeFound {
  readonly mode: Mode;
  /** At a check that is there to find it. */
  readonly byOwn: number;
  /** At another check, at a line without one, in the casualty, at a muster or a return: by accident. */
  readonly byAccident: number;
  /** The same with findings of one start that failed counted once: by its own check where that found it. */
  readonly once: { readonly byOwn: number; readonly byAccident: number };
  /** What was being looked at when it was found by accident, most often first; "outside an opening" where nothing was. */
  readonly where: readonly { readonly what: string; readonly times: number }[];
  /** How many checks are there to find it. */
  readonly checks: number;
}

/**
 * How each mode was found that ever was, over all kits of a pattern, whatever its version.
 *
 * @param pattern - its newest version; modes that it no longer has are left out
 * @param findings - on its kits
 * @returns those found most often by accident first
 */
export function modesFound(pattern: Pattern, findings: readonly FindingRead[]): readonly ModeFound[] {
  const read = pattern.modes.flatMap((mode) => {
    const own = findings.filter(({ finding }) => finding.mode === mode.id);
    return own.length === 0 ? [] : [modeRead(pattern, mode, own)];
  });
  return read.toSorted((one, other) => other.byAccident - one.byAccident || other.byOwn - one.byOwn);
}

/** Findings of no mode that the pattern's newest version has. */
export type UnnamedFound = Pick<ModeFound, "byAccident" | "where">;

/**
 * Findings that no mode of the pattern names: something else, or a mode that an earlier version had. With those of
 * {@link modesFound} they are all there are.
 *
 * @param pattern - its newest version
 * @param findings - on its kits
 */
export function unnamedFound(pattern: Pattern, findings: readonly FindingRead[]): UnnamedFound {
  const named = new Set(pattern.modes.map(({ id }) => id));
  const unnamed = findings.map(({ finding }) => finding).filter(({ mode }) => !named.has(mode));
  return { byAccident: unnamed.length, where: placesOf(pattern, unnamed) };
}

function modeRead(pattern: Pattern, mode: Mode, findings: readonly FindingRead[]): ModeFound {
  const checks = new Set(checksFinding(pattern, mode.id).map(({ id }) => id));
  const isStray = ({ finding: { check } }: FindingRead) => check === undefined || !checks.has(check);
  const stray = findings.filter(isStray);
  const once = countedOnce(findings);
  const byAccident = once.filter((group) => group.every(isStray)).length;
  return {
    mode,
    byOwn: findings.length - stray.length,
    byAccident: stray.length,
    once: { byOwn: once.length - byAccident, byAccident },
    where: placesOf(
      pattern,
      stray.map(({ finding }) => finding),
    ),
    checks: checks.size,
  };
}

function placesOf(pattern: Pattern, findings: readonly Finding[]): ModeFound["where"] {
  const where = new Map<string, number>();
  for (const one of findings) {
    const what = whereOf(pattern, one);
    where.set(what, (where.get(what) ?? 0) + 1);
  }
  return [...where].map(([what, times]) => ({ what, times })).toSorted((one, other) => other.times - one.times);
}

function whereOf(pattern: Pattern, { check, step, turnaround }: Finding): string {
  const asked = check === undefined ? undefined : checkNamed(pattern, check);
  if (asked) return asked.ask;
  const line = pattern.stages.flatMap(({ steps }) => steps).find(({ id }) => id === step);
  return line?.text ?? (turnaround === undefined ? "outside an opening" : "no line of this version");
}
