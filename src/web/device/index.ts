export { doingOf, useCarryOut } from "./act.ts";
export { adoptNewVersion, hasWorkOpen, keepAppHere, useNewVersion } from "./app-version.ts";
export * from "./contract.ts";
export { sayClockDifference } from "./clock.ts";
export { useRecorder, useSendState, useStation } from "./context.ts";
export type { Alarm, DeviceState, SignInOutcome, Sitting } from "./device-state.ts";
export type { OutboxLine } from "./device-store.ts";
export { DeviceProvider, useDeviceState, useThisDevice } from "./provider.tsx";
export { ThisDevice } from "./this-device.ts";
