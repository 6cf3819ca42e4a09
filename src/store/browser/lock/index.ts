export { PIN_ITERATIONS, type Opened, type Owner, type PasskeySecret } from "./key-wrap.ts";
export type { OnProgress, Progress } from "./conversion.ts";
export { StoreLock, type LockState } from "./store-lock.ts";
