import { deviceAmbient } from "../clock.ts";
import type { DeviceStore } from "./device-store.ts";

/** What the device remembers between openings, beside the log. */
export const NOTES = { device: "device", sitting: "sitting", place: "place" } as const;

/** Id of this device; made once. */
export async function deviceIdOf(store: DeviceStore): Promise<string> {
  const known = await store.note<string>(NOTES.device);
  if (known !== undefined) return known;
  const id = deviceAmbient.newId();
  await store.putNote(NOTES.device, id);
  return id;
}
