import type { DeviceStore } from "../held/device-store.ts";

/** What this device knows of the station having been put back to an earlier copy, until its person has read it. */
export interface PutBack {
  /** When this device first found out. */
  readonly since: string;
  /** Lines that the station did not have any more and this device holds. */
  readonly lines: number;
}

const PUT_BACK = "put-back";

/**
 * Notes that the station was put back.
 *
 * @param found - lines that this device finds it to lack: so many in all, or so many more than before
 */
export async function notePutBack(
  store: DeviceStore,
  now: string,
  found: { readonly atLeast?: number; readonly more?: number } = {},
): Promise<void> {
  const before = await readPutBack(store);
  if (before === undefined && found.atLeast === 0) return;
  const lines = Math.max(before?.lines ?? 0, found.atLeast ?? 0) + (found.more ?? 0);
  await store.putNote(PUT_BACK, { since: before?.since ?? now, lines } satisfies PutBack);
}

export function readPutBack(store: DeviceStore): Promise<PutBack | undefined> {
  return store.note<PutBack>(PUT_BACK);
}

/** Its person has read it. */
export function forgetPutBack(store: DeviceStore): Promise<void> {
  return store.putNote(PUT_BACK, undefined);
}
