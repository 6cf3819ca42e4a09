export * from "./kinds.ts";
export * from "./state.ts";
