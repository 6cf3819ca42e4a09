import { STATION_PLACE, type Entry } from "#log";
import { openBrowserStore } from "#store/browser";
import type { Pattern } from "#kit";
import { deviceAmbient } from "../clock.ts";
import type { Sitting } from "../device-state.ts";
import type { DeviceStore } from "../held/device-store.ts";
import { WHOLE } from "../snapshot/first-sync.ts";

/**
 * What a locked device knows without being opened, so that a casualty sheet can be written on it: ids that say nothing
 * outside the station's log, and the place's time zone.
 */
export interface BesideCard {
  readonly device: string;
  readonly deviceName: string;
  /** Id of whoever used the device last: what is written unopened is written as theirs. */
  readonly person: string;
  readonly place: string;
  readonly zone: string;
}

/** The note that holds the card; it stays in the clear. */
const CARD = "beside";
const DATABASE = "drykeel-beside";
/** In this tab, a sheet is being written on a locked device: it comes back after a reload. */
const IN_USE = "drykeel.beside";
/** On this device, lines were written while it was locked, and wait in the clear to be taken in. */
export const BESIDE_WRITTEN = "drykeel.beside-written";

/** A store in the clear beside the locked one, with what may be written in it. */
export interface Beside {
  readonly store: DeviceStore;
  readonly card: BesideCard;
}

export function keepCard(store: DeviceStore, card: BesideCard): Promise<void> {
  return store.putNote(CARD, card);
}

/** True where this tab writes beside the lock. */
export function isBesideInUse(): boolean {
  return sessionStorage.getItem(IN_USE) !== null;
}

/** Goes to a fresh casualty sheet without opening the device. */
export function goBeside(): void {
  sessionStorage.setItem(IN_USE, "yes");
  location.assign("/casualty/new");
}

/** Goes back to where the device is opened. */
export function leaveBeside(): void {
  sessionStorage.removeItem(IN_USE);
  location.assign("/");
}

/** Opens the store beside the locked one; undefined where the device knows too little for it, or is not locked. */
export async function openBeside(locked: DeviceStore): Promise<Beside | undefined> {
  const card = await locked.note<BesideCard>(CARD);
  if (card === undefined || locked.lock.state.kind !== "locked") return undefined;
  const store = await openBrowserStore(DATABASE);
  await store.putNote("patterns", await locked.note<readonly Pattern[]>("patterns"));
  await store.putNote(WHOLE, true);
  localStorage.setItem(BESIDE_WRITTEN, "yes");
  return { store, card };
}

/** Who writes beside the lock: nobody has shown who they are. */
export function sittingBeside({ person, device, deviceName }: BesideCard): Sitting {
  const nobody = { id: person, name: "Not shown: the device is locked", role: "crew" as const };
  return { person: nobody, device, deviceName, stationName: "", passkeys: 0, demo: false };
}

/** Lines that stand in for the station's, in memory only: a person, and the place without its name. */
export function groundBeside({ person, device, place, zone }: BesideCard): readonly Entry[] {
  const line = { place: STATION_PLACE, at: "2000-01-01T00:00:00Z", by: person, device };
  const { name, role } = sittingBeside({ person, device, place, zone, deviceName: "" }).person;
  const { newId } = deviceAmbient;
  return [
    { ...line, id: newId(), subject: `person:${person}`, kind: "person-joined", body: { name, role } },
    {
      ...line,
      id: newId(),
      subject: `place:${place}`,
      kind: "place-set",
      body: { name: "Your place", strength: 0, zone },
    },
  ];
}

/**
 * Takes lines and photos written while the device was locked into its own store: first they are there, then they go. May
 * be stopped anywhere and begun again.
 */
export async function takeInBeside(store: DeviceStore): Promise<void> {
  if (localStorage.getItem(BESIDE_WRITTEN) === null) return;
  const beside = await openBrowserStore(DATABASE);
  for (const { hash, since } of await beside.unsentPhotos()) {
    const photo = await beside.photo(hash);
    if (photo !== undefined) await store.putPhoto(photo, since);
  }
  await store.putOutbox(await beside.outbox());
  await beside.erase();
  await beside.close();
  localStorage.removeItem(BESIDE_WRITTEN);
}
