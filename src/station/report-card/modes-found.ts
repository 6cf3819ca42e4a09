import { familyOf, checkNamed, checksFinding, type Mode, type Pattern } from "#kit";
import { isOfDrill, type Finding, type KitState } from "#readiness";

/** How one mode was found. */
export interface ModeFound {
  readonly mode: Mode;
  /** At a check that is there to find it. */
  readonly byOwn: number;
  /** At another check, at a line without one, in the casualty, at a muster or a return: by accident. */
  readonly byAccident: number;
  /** What was being looked at when it was found by accident, most often first; "outside an opening" where nothing was. */
  readonly where: readonly { readonly what: string; readonly times: number }[];
  /** How many checks are there to find it. */
  readonly checks: number;
}

/**
 * How each mode was found that ever was, over all kits of a pattern, whatever its version.
 *
 * @param pattern - its newest version; modes that it no longer has are left out
 * @param kits - of the station, those taken off charge too
 * @returns those found most often by accident first
 */
export function modesFound(pattern: Pattern, kits: readonly KitState[]): readonly ModeFound[] {
  const findings = findingsOf(pattern, kits);
  const read = pattern.modes.flatMap((mode) => {
    const own = findings.filter((one) => one.mode === mode.id);
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
 * @param kits - of the station, those taken off charge too
 */
export function unnamedFound(pattern: Pattern, kits: readonly KitState[]): UnnamedFound {
  const named = new Set(pattern.modes.map(({ id }) => id));
  const unnamed = findingsOf(pattern, kits).filter(({ mode }) => !named.has(mode));
  return { byAccident: unnamed.length, where: placesOf(pattern, unnamed) };
}

function findingsOf(pattern: Pattern, kits: readonly KitState[]): readonly Finding[] {
  const alike = kits.filter((kit) => familyOf(kit.pattern) === pattern.id);
  return alike.flatMap((kit) => kit.findings.filter((one) => !isOfDrill(one, kit)));
}

function modeRead(pattern: Pattern, mode: Mode, findings: readonly Finding[]): ModeFound {
  const checks = new Set(checksFinding(pattern, mode.id).map(({ id }) => id));
  const stray = findings.filter(({ check }) => check === undefined || !checks.has(check));
  return {
    mode,
    byOwn: findings.length - stray.length,
    byAccident: stray.length,
    where: placesOf(pattern, stray),
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
