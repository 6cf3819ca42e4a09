import { createContext, useContext } from "react";
import type { Recorder, SendState, StationView } from "./sync/contract.ts";

/** What the device gives the pages. `sendState` is absent before sign-in. */
export interface DeviceValue {
  readonly station?: StationView;
  readonly recorder?: Recorder;
  readonly sendState?: SendState;
}

export const DeviceContext = createContext<DeviceValue>({});

/** Everything this device knows of the station. Only under a signed-in route. */
export function useStation(): StationView {
  return required(useContext(DeviceContext).station, "useStation");
}

/** Writes lines and keeps photos. Only under a signed-in route. The same object for as long as the person is signed in. */
export function useRecorder(): Recorder {
  return required(useContext(DeviceContext).recorder, "useRecorder");
}

/** What is not yet sent; undefined before sign-in. */
export function useSendState(): SendState | undefined {
  return useContext(DeviceContext).sendState;
}

function required<Value>(value: Value | undefined, hook: string): Value {
  if (value === undefined) throw new Error(`Broken invariant: ${hook} used before sign-in`);
  return value;
}
