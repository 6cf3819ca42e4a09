export { goBeside, isBesideInUse, leaveBeside, openBeside } from "./beside.ts";
export type { OpenOutcome } from "./device-lock.ts";
