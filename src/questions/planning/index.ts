export { planYearQuestion } from "./plan-year.ts";
