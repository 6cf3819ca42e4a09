import type { Check, Pattern } from "#kit";
import { compareDrill, trialsOf, type Comparison, type Drill, type KitState } from "#readiness";
import { foundByCheck, type FoundByCheck, type Looks } from "#reliability";

/** What a station tells of its drills. */
export interface DrillLog {
  readonly kits: readonly KitState[];
  /** Kits taken off charge: their drills count too. */
  readonly retired?: readonly KitState[];
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/** A drill on a kit, with what it showed so far. */
export interface KitDrill {
  readonly kit: KitState;
  readonly drill: Drill;
  readonly pattern: Pattern | undefined;
  readonly comparison: Comparison;
}

/** Drills that are on, and those that are over, the newest first. */
export function drillsOf({ kits, retired = [], patterns }: DrillLog): {
  readonly on: readonly KitDrill[];
  readonly over: readonly KitDrill[];
} {
  const all = [...kits, ...retired].flatMap((kit) =>
    (kit.drills ?? []).map((drill) => {
      const pattern = patterns.get(kit.pattern);
      return { kit, drill, pattern, comparison: compareDrill(kit, drill, pattern) };
    }),
  );
  const newest = all.toSorted((one, other) => Date.parse(other.drill.begun.at) - Date.parse(one.drill.begun.at));
  return { on: newest.filter(({ drill }) => !drill.ended), over: newest.filter(({ drill }) => drill.ended) };
}

/** How often one check of a pattern found what was planted. */
export interface CheckChance extends Looks {
  readonly pattern: Pattern;
  readonly check: Check;
  /** Line of the pattern at which it is asked first. */
  readonly line: number;
  readonly told: FoundByCheck;
}

/**
 * Of every check that a drill tried: how often it found what it can find, and the chance of it, others of its pattern
 * pooled. The one most often missed first.
 *
 * @param log - the station
 * @returns by check, whatever the version of the pattern
 * @source as `foundByCheck`; trials as `trialsOf`
 */
export function checkChances({ kits, retired = [], patterns }: DrillLog): readonly CheckChance[] {
  const families = new Map<string, Map<string, Looks>>();
  for (const kit of [...kits, ...retired]) {
    const pattern = patterns.get(kit.pattern);
    if (!pattern) continue;
    const looks = families.get(pattern.id) ?? new Map<string, Looks>();
    families.set(pattern.id, looks);
    for (const { check, found } of (kit.drills ?? []).flatMap((drill) => trialsOf(kit, drill, pattern))) {
      const before = looks.get(check) ?? { found: 0, planted: 0 };
      looks.set(check, { found: before.found + (found ? 1 : 0), planted: before.planted + 1 });
    }
  }
  const newest = newestById(patterns);
  return [...families].flatMap(([id, looks]) => chancesIn(newest.get(id), looks)).toSorted(missedFirst);
}

function chancesIn(pattern: Pattern | undefined, looks: ReadonlyMap<string, Looks>): readonly CheckChance[] {
  if (!pattern) return [];
  return [...looks].flatMap(([id, own]) => {
    const check = pattern.checks.find((one) => one.id === id);
    const step = pattern.stages.flatMap(({ steps }) => steps).find(({ checks }) => checks.includes(id));
    if (!check || !step) return [];
    const others = [...looks].flatMap(([other, of]) => (other === id ? [] : [of]));
    return [{ ...own, pattern, check, line: step.line, told: foundByCheck(own, others) }];
  });
}

function newestById(patterns: DrillLog["patterns"]): ReadonlyMap<string, Pattern> {
  const newest = new Map<string, Pattern>();
  for (const pattern of patterns.values()) {
    const before = newest.get(pattern.id);
    if (!before || before.version < pattern.version) newest.set(pattern.id, pattern);
  }
  return newest;
}

function missedFirst(one: CheckChance, other: CheckChance): number {
  return missed(other) - missed(one) || other.planted - one.planted || one.line - other.line;
}

function missed({ planted, found }: Looks): number {
  return planted - found;
}
