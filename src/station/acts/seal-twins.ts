import { plainSeal, type KitState } from "#readiness";

/**
 * Names on each kit another that is on record with the same seal: two devices may have used one number while apart.
 * A kit of which that has not changed stays the object it was.
 *
 * @param kits - by subject, as their own entries tell them
 * @param before - what this gave the last time
 */
export function nameTwins(
  kits: ReadonlyMap<string, KitState>,
  before: ReadonlyMap<string, KitState>,
): ReadonlyMap<string, KitState> {
  const bySeal = groupBySeal(kits);
  return new Map([...kits].map(([subject, kit]) => [subject, withTwin(kit, bySeal, before.get(subject))]));
}

function groupBySeal(kits: ReadonlyMap<string, KitState>): ReadonlyMap<string, readonly KitState[]> {
  const groups = new Map<string, KitState[]>();
  for (const kit of kits.values()) {
    if (!kit.seal || kit.retired) continue;
    const number = plainSeal(kit.seal.number);
    const group = groups.get(number);
    if (group) group.push(kit);
    else groups.set(number, [kit]);
  }
  return groups;
}

function withTwin(
  kit: KitState,
  bySeal: ReadonlyMap<string, readonly KitState[]>,
  before: KitState | undefined,
): KitState {
  const twins = kit.seal && !kit.retired ? (bySeal.get(plainSeal(kit.seal.number)) ?? []) : [];
  const twin = twins.find((other) => other.id !== kit.id)?.name;
  if (twin === undefined) return kit;
  const isUnchanged = before?.sealTwin === twin && before.heads === kit.heads;
  return isUnchanged ? before : { ...kit, sealTwin: twin };
}
