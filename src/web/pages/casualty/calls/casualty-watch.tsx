import { Suspense } from "react";
import { useDeviceState } from "#web/device/index.ts";
import { fetchedLater } from "#web/loading/index.ts";

const CasualtyAlarms = fetchedLater(() => import("./casualty-alarms.tsx"));

/** Over every page: nothing, until a casualty is open. */
export function CasualtyWatch() {
  const state = useDeviceState();
  const casualties = state.kind === "signed-in" ? (state.station?.casualties ?? []) : [];
  const open = casualties.filter(({ closed }) => !closed);
  if (open.length === 0) return null;
  return (
    <Suspense fallback={null}>
      <CasualtyAlarms open={open} />
    </Suspense>
  );
}
