import { casualtyRuns, withCasualtyRuns, type CasualtyState, type KitState, type Run } from "#readiness";

/** A kit with the runs of casualties, and what it was made from. */
export interface KitWithRuns {
  readonly from: KitState;
  /** The runs added, as text to compare. */
  readonly added: string;
  readonly kit: KitState;
}

/**
 * Puts what sheets of casualties tell of our kits among the runs of each kit. A kit of which neither has changed stays
 * the object it was.
 *
 * @param kits - by subject, as their own entries tell them
 * @param casualties - in any order
 * @param before - what this gave the last time
 */
export function addCasualtyRuns(
  kits: ReadonlyMap<string, KitState>,
  casualties: readonly CasualtyState[],
  before: ReadonlyMap<string, KitWithRuns>,
): ReadonlyMap<string, KitWithRuns> {
  const runs = runsByKit(casualties);
  return new Map(
    [...kits].map(([subject, kit]) => [subject, withRuns(kit, runs.get(kit.id) ?? [], before.get(subject))]),
  );
}

function runsByKit(casualties: readonly CasualtyState[]): ReadonlyMap<string, readonly Run[]> {
  const found = new Map<string, Run[]>();
  for (const { kit, run } of casualties.flatMap(casualtyRuns)) found.set(kit, [...(found.get(kit) ?? []), run]);
  return found;
}

function withRuns(kit: KitState, runs: readonly Run[], before: KitWithRuns | undefined): KitWithRuns {
  const added = JSON.stringify(runs);
  if (before?.from === kit && before.added === added) return before;
  return { from: kit, added, kit: runs.length === 0 ? kit : { ...kit, runs: withCasualtyRuns(kit.runs, runs) } };
}
