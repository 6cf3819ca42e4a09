export { goBeside, isBesideInUse, leaveBeside, openBeside } from "./beside.ts";
export type { OpenOutcome } from "./device-lock.ts";
export {
  FIRST_IDLE,
  IDLE_MINUTES,
  idleShelf,
  isLeftIdle,
  isLooser,
  type IdleChoice,
  type IdleMinutes,
} from "./idle-lock.ts";
export { instantsOf, sealedCalls, type Caller } from "./sealed-calls.ts";
