import { Suspense } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { fetchedLater } from "#web/loading/index.ts";

const IdleLock = fetchedLater(async () => ({ default: (await import("./idle-lock.tsx")).IdleLock }));
const SealedCall = fetchedLater(async () => ({ default: (await import("./sealed-call.tsx")).SealedCall }));

/** Over every page: locks an open device that nobody uses, and calls on a locked one. Nothing where there is no lock. */
export function LockWatch() {
  const state = useDeviceState();
  const { lock } = useThisDevice();
  const isSealed = state.kind === "locked" || (state.kind === "signed-in" && state.isBeside === true);
  const isOpen = state.kind !== "opening" && !isSealed && lock.kind === "open";
  return (
    <Suspense fallback={null}>
      {isSealed && <SealedCall />}
      {isOpen && <IdleLock view={state.kind === "signed-in" ? state.station : undefined} />}
    </Suspense>
  );
}
