export { COMMON_PRACTICE, sayMet } from "./common-practice.ts";
export { afterMeeting, flushDue, type FlushDue } from "./flush-due.ts";
export { sayLent, sayLentOut } from "./lent-fold.ts";
export { metIn } from "./met-fold.ts";
