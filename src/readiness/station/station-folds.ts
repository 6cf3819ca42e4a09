import type { Entry } from "#log";
import { isKindOf } from "../kinds/folds-of.ts";
import { boatFolds } from "../registry/boat.ts";
import { deviceFolds } from "../registry/device.ts";
import { placeFolds } from "../registry/place.ts";
import { stationFolds } from "../registry/station.ts";
import type { Device, Place, RescueBoat } from "../state.ts";
import { idOf } from "../subject-id.ts";
import type { StationDraft } from "./station-draft.ts";

/** A device after one more entry. */
export function applyDeviceEntry(before: Device | undefined, entry: Entry): Device {
  const device = before ?? { id: idOf(entry.subject), name: idOf(entry.subject), shutOut: false };
  return isKindOf(deviceFolds, entry.kind) ? deviceFolds[entry.kind](device, entry.body as never, entry) : device;
}

/** A place after one more entry. */
export function applyPlaceEntry(before: Place | undefined, entry: Entry): Place {
  const id = idOf(entry.subject);
  const place = before ?? { id, name: id, strength: 0, zone: "UTC", closed: false };
  return isKindOf(placeFolds, entry.kind) ? placeFolds[entry.kind](place, entry.body as never, entry) : place;
}

/** A rescue boat after one more entry; undefined until she is set for the first time. */
export function applyBoatEntry(before: RescueBoat | undefined, entry: Entry): RescueBoat | undefined {
  return isKindOf(boatFolds, entry.kind) ? boatFolds[entry.kind](before, entry.body as never, entry) : before;
}

/** Folds one more entry into the station. */
export function applyToStation(station: StationDraft, entry: Entry): void {
  if (isKindOf(stationFolds, entry.kind)) stationFolds[entry.kind](station, entry.body as never, entry);
}
