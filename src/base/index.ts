export * from "./errors.ts";
export * from "./quantity.ts";
export * from "./calendar.ts";
export * from "./cautions.ts";
