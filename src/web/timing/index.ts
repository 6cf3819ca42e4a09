export { AlarmCall } from "./alarm-call.tsx";
export { alarm } from "./alarm.ts";
export { readTimer, sayDuration, type Elapsed } from "./clock.ts";
export { useArming } from "./use-arming.ts";
export { useNow } from "./use-now.ts";
export { useSounding } from "./use-sounding.ts";
export { useWakeLock } from "./wake-lock.ts";
