export * from "./errors.ts";
export * from "./quantity.ts";
export { dimensions, unitsOf, type Unit } from "./units.ts";
export * from "./calendar.ts";
export * from "./cautions.ts";
