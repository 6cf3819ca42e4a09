export * from "./contract.ts";
export { DeviceContext, useRecorder, useSendState, useStation, type DeviceValue } from "./context.ts";
