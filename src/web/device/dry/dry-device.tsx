import type { Pattern } from "#kit";
import { useMemo, useState, useSyncExternalStore, type ReactNode } from "react";
import { deviceAmbient } from "../clock.ts";
import { DeviceContext, useStation } from "../context.ts";
import { DryStation } from "./dry-station.ts";

/** Gives the pages below a station in memory, with one open kit built to the draft; nothing they do is written. */
export function DryDevice({ pattern, children }: { readonly pattern: Pattern; readonly children: ReactNode }) {
  const { me, place, units } = useStation();
  const [dry] = useState(() => new DryStation({ pattern, me, place, units, ambient: deviceAmbient }));
  const station = useSyncExternalStore(dry.hear, dry.now);
  const value = useMemo(() => ({ recorder: dry.recorder, ...(station && { station }) }), [dry, station]);
  return <DeviceContext value={value}>{children}</DeviceContext>;
}
