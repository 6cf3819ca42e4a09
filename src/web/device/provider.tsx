import { createContext, useContext, useMemo, useSyncExternalStore, type ReactNode } from "react";
import { DeviceContext, type DeviceValue } from "./context.ts";
import type { DeviceState } from "./device-state.ts";
import type { ThisDevice } from "./this-device.ts";

const ThisDeviceContext = createContext<ThisDevice | undefined>(undefined);

/** Gives the pages below this device, and what it knows. */
export function DeviceProvider({ device, children }: { readonly device: ThisDevice; readonly children: ReactNode }) {
  const state = useSyncExternalStore(device.hear, device.now);
  const value = useMemo(() => valueOf(device, state), [device, state]);
  return (
    <ThisDeviceContext value={device}>
      <DeviceContext value={value}>{children}</DeviceContext>
    </ThisDeviceContext>
  );
}

/** The device itself: signing in and out, sending, exporting. */
export function useThisDevice(): ThisDevice {
  const device = useContext(ThisDeviceContext);
  if (!device) throw new Error("Broken invariant: useThisDevice outside DeviceProvider");
  return device;
}

/** How it stands with the device; the component draws again when it changes. */
export function useDeviceState(): DeviceState {
  const device = useThisDevice();
  return useSyncExternalStore(device.hear, device.now);
}

function valueOf(device: ThisDevice, state: DeviceState): DeviceValue {
  if (state.kind !== "signed-in") return {};
  const { station, sendState } = state;
  return { recorder: device.recorder, sendState, ...(station && { station }) };
}
