import { STRIKE, type Entry, type StrikeBody } from "./entry.ts";

/**
 * Says which entries of one subject are struck, whatever the order in which strikes arrived.
 *
 * A strike counts unless it is itself struck by one that counts. Strikes that strike each other in a ring, which only
 * a forger can make, count for nothing unless a strike from outside the ring undoes one of them.
 *
 * @param strikes - every strike of the subject
 * @returns by id of the struck entry, the strike that counts and comes first by id
 */
export function settleStrikes(strikes: readonly Entry[]): ReadonlyMap<string, Entry> {
  const byId = new Map(strikes.map((strike) => [strike.id, strike]));
  const strikers = countStrikers(strikes);
  const struck = new Map<string, Entry>();
  const settled = new Set<string>();
  const ready = strikes.filter((strike) => !strikers.has(strike.id));
  for (let strike = ready.pop(); strike !== undefined; strike = ready.pop()) {
    if (settled.has(strike.id)) continue;
    settled.add(strike.id);
    const target = targetOf(strike);
    if (!struck.has(strike.id)) noteStrike(struck, target, strike);
    const left = (strikers.get(target) ?? 0) - 1;
    strikers.set(target, left);
    const next = byId.get(target);
    if (next !== undefined && (left === 0 || struck.has(target))) ready.push(next);
  }
  return struck;
}

/** How many strikes name each entry. */
function countStrikers(strikes: readonly Entry[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const strike of strikes) counts.set(targetOf(strike), (counts.get(targetOf(strike)) ?? 0) + 1);
  return counts;
}

function noteStrike(struck: Map<string, Entry>, target: string, strike: Entry): void {
  const first = struck.get(target);
  if (first === undefined || strike.id < first.id) struck.set(target, strike);
}

/** Id of the entry that a strike strikes. */
export function targetOf(strike: Entry): string {
  return (strike.body as StrikeBody).entry;
}

/** True for an entry of the one kind that the log itself understands. */
export function isStrike(entry: Entry): entry is Entry<typeof STRIKE, StrikeBody> {
  return entry.kind === STRIKE;
}
