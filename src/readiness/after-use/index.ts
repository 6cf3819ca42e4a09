export { COMMON_PRACTICE, metToSay, sayMet } from "./common-practice.ts";
export { afterMeeting, flushDue, type FlushDue } from "./flush-due.ts";
export { lentOutToSay, sayLent, sayLentOut } from "./lent-fold.ts";
export { metIn } from "./met-fold.ts";
