export * from "./finding/index.ts";
export * from "./symptoms/index.ts";
