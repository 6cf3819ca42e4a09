import { Suspense } from "react";
import { fetchedLater } from "#web/loading/index.ts";
import { useRefuels } from "./refuel.ts";

const RefuelAlarm = fetchedLater(() => import("./refuel-alarm.tsx"));

/** Over every page: nothing, until a refuel reminder runs on this device. */
export function RefuelWatch() {
  const kept = useRefuels();
  if (kept.length === 0) return null;
  return (
    <Suspense fallback={null}>
      <RefuelAlarm kept={kept} />
    </Suspense>
  );
}
