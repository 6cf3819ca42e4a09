import { hashEntry, isStrike, targetOf, type Entry } from "#log";
import type { DeviceStore } from "../held/device-store.ts";
import type { HandedLine } from "./handed-lines.ts";

const NOTE = "handed";

/** Lines handed over to this device that the station, as far as it was pulled, does not have. */
export async function readHanded(store: DeviceStore): Promise<readonly HandedLine[]> {
  const all = (await store.note<readonly HandedLine[]>(NOTE)) ?? [];
  if (all.length === 0) return all;
  const held = await store.heldOf(all.map(({ entry }) => entry.id));
  return all.filter(({ entry }) => !held.has(entry.id));
}

/** Adds lines; those that the station has meanwhile go. */
export async function putHanded(store: DeviceStore, lines: readonly HandedLine[]): Promise<void> {
  const before = await readHanded(store);
  const ids = new Set(before.map(({ entry }) => entry.id));
  await store.putNote(NOTE, [...before, ...lines.filter(({ entry }) => !ids.has(entry.id))]);
}

/** Takes lines off this device, by their ids. */
export async function dropHanded(store: DeviceStore, ids: ReadonlySet<string>): Promise<void> {
  await store.putNote(
    NOTE,
    (await readHanded(store)).filter(({ entry }) => !ids.has(entry.id)),
  );
}

/** True where the station has another line under the id of one that was taken here: what was handed over was changed. */
export function isOtherThan(handed: ReadonlyMap<string, HandedLine>, entry: HandedLine["entry"]): boolean {
  const taken = handed.get(entry.id);
  return taken !== undefined && hashEntry(taken.entry) !== hashEntry(entry);
}

/**
 * Lines of one's own that must wait: a strike is judged by the line it strikes, and the station does not have that yet.
 *
 * @param own - lines to be sent, oldest first
 * @param out - ids of lines handed over that the station is not known to have
 */
export function waitingForHanded(own: readonly Entry[], out: ReadonlySet<string>): ReadonlySet<string> {
  const waiting = new Set<string>();
  for (const entry of own) {
    const target = isStrike(entry) ? targetOf(entry) : undefined;
    if (target !== undefined && (out.has(target) || waiting.has(target))) waiting.add(entry.id);
  }
  return waiting;
}
