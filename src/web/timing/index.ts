export { alarm } from "./alarm.ts";
export { readTimer, type Elapsed } from "./clock.ts";
export { useArming } from "./use-arming.ts";
export { useNow } from "./use-now.ts";
export { useSounding } from "./use-sounding.ts";
export { useWakeLock } from "./wake-lock.ts";
