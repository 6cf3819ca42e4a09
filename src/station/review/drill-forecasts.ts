import { familyOf } from "#kit";
import { trialsOf, type KitState } from "#readiness";
import { foundByCheck, type Looks } from "#reliability";
import type { StartLog } from "../start-chance/index.ts";

/** What was to be believed of a check before a planted fault stood before it, and whether it found it. */
export interface DrillForecast {
  readonly kit: string;
  readonly check: string;
  /** RFC 3339: when the drill ended. */
  readonly at: string;
  /** Chance that it would find it [1]. */
  readonly chance: number;
  readonly came: boolean;
}

/**
 * For every planted fault and check of every drill that was compared, the chance that the check would find it, from the
 * drills that ended before on kits of the same pattern, and what came.
 *
 * @param log - the station; kits taken off charge too
 * @returns oldest first; trials of one drill are forecast from the same knowledge
 * @source as `foundByCheck`; each judged by what came after it (Dawid's prequential principle, 1984, FROM MEMORY)
 */
export function drillForecasts({ kits, patterns }: Pick<StartLog, "kits" | "patterns">): readonly DrillForecast[] {
  const known = new Map<string, Map<string, Looks>>();
  const drills = kits.flatMap((kit) => drillsOf(kit, patterns));
  return drills
    .toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at))
    .flatMap(({ kit, family, at, trials }) => {
      const before = known.get(family) ?? new Map<string, Looks>();
      const told = trials.map(({ check, found }) => ({ kit, check, at, chance: chanceOf(before, check), came: found }));
      known.set(family, trials.reduce(counted, new Map(before)));
      return told;
    });
}

function drillsOf(kit: KitState, patterns: StartLog["patterns"]) {
  const pattern = patterns.get(kit.pattern);
  if (!pattern) return [];
  return (kit.drills ?? []).flatMap((drill) => {
    const { ended } = drill;
    if (!ended) return [];
    return [{ kit: kit.id, family: familyOf(kit.pattern), at: ended.at, trials: trialsOf(kit, drill, pattern) }];
  });
}

const NONE: Looks = { found: 0, planted: 0 };

function chanceOf(before: ReadonlyMap<string, Looks>, check: string): number {
  const others = [...before].flatMap(([id, looks]) => (id === check ? [] : [looks]));
  return foundByCheck(before.get(check) ?? NONE, others).chance.mean;
}

function counted(before: Map<string, Looks>, { check, found }: { readonly check: string; readonly found: boolean }) {
  const { found: hits, planted } = before.get(check) ?? NONE;
  return before.set(check, { found: hits + (found ? 1 : 0), planted: planted + 1 });
}
