import type { Alarm } from "../device-state.ts";
import type { DeviceStore } from "./device-store.ts";
import { SIGN_OUT_UNTOLD } from "../sync/sitting-desk.ts";
import { LOOKS_KEY } from "#web/theme/index.ts";
import { BESIDE_WRITTEN } from "../lock/beside.ts";

const LAST_USED = "drykeel.last-used";

/**
 * Tells a disk that was emptied from one never used: a mark in another drawer of the browser outlives the store more
 * often than not. Whatever was unsent is then gone, and its people must hear it.
 */
export async function findEmptied(store: DeviceStore, storage: Pick<Storage, "getItem">): Promise<Alarm | undefined> {
  const lastUsed = storage.getItem(LAST_USED);
  const isUsed = (await store.note<boolean>("used")) === true;
  return lastUsed !== null && !isUsed ? { kind: "emptied", lastUsed } : undefined;
}

/** Marks both drawers as used. */
export async function markUsed(store: DeviceStore, storage: Pick<Storage, "setItem">, now: string): Promise<void> {
  await store.putNote("used", true);
  storage.setItem(LAST_USED, now);
}

/**
 * What the drawer keeps when its people leave: the screen's looks, a sign-out the server has yet to hear of, and that lines
 * written beside a lock wait to be taken in.
 */
const STAYS: ReadonlySet<string> = new Set([LOOKS_KEY, SIGN_OUT_UNTOLD, BESIDE_WRITTEN]);

/** Empties the drawer on purpose: unfinished entries, people's units, the device's name, and the mark of use. */
export function forgetPeople(storage: Pick<Storage, "length" | "key" | "removeItem">): void {
  const keys = Array.from({ length: storage.length }, (_, at) => storage.key(at) ?? "");
  for (const key of keys) if (key.startsWith("drykeel.") && !STAYS.has(key)) storage.removeItem(key);
}

/** Asks the browser to keep the data; alarm where it will not promise. */
export async function askToKeep(): Promise<Alarm | undefined> {
  if (!("storage" in navigator) || !("persist" in navigator.storage)) return { kind: "not-kept" };
  const isKept = (await navigator.storage.persisted()) || (await navigator.storage.persist());
  return isKept ? undefined : { kind: "not-kept" };
}
