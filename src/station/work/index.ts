export { presentOn, type WorkStation } from "./able.ts";
export { workDueOf, type DueLine, type ShelfCount } from "./work-due.ts";
export { dateWork, planOpenings, putOffWork, setAbsence, setHours, takeWork } from "./work-acts.ts";
export { firstMonday, fixedWeeks, type FixedWeek } from "./fixed-weeks.ts";
export { wallOf, type WallKit, type WallView, type WallWork } from "./wall.ts";
export { ASSUMED_HOURS, planInputOf, type PlanAsked, type PlanInput } from "./plan-input.ts";
