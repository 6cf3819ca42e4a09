import { linePhotosOf } from "#readiness";
import { useEffect, useRef } from "react";
import { useDeviceState, useThisDevice, type StationView } from "../device/index.ts";

/** Brings the station's own photos of lines onto this device while there is a network, so that they are there without one. */
export function LinePhotoWatch() {
  const state = useDeviceState();
  const { recorder } = useThisDevice();
  const held = useRef(new Set<string>());
  const station = state.kind === "signed-in" && !state.isBeside ? state.station : undefined;
  useEffect(() => {
    for (const hash of station ? wantedBy(station) : []) {
      if (held.current.has(hash)) continue;
      held.current.add(hash);
      void recorder.photoUrl(hash).then((url) => url === undefined && held.current.delete(hash));
    }
  }, [station, recorder]);
  return null;
}

function wantedBy(station: StationView): ReadonlySet<string> {
  const ids = new Set([...station.patterns.values()].map(({ id }) => id));
  const own = [...ids].flatMap((id) => linePhotosOf(station.entriesOf(`pattern:${id}`)));
  return new Set(own.flatMap(({ photos }) => photos.map(({ hash }) => hash)));
}
