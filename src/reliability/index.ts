export * from "./standby/index.ts";
export * from "./chance/index.ts";
export * from "./lifetimes/index.ts";
export * from "./trends/index.ts";
export * from "./spares/index.ts";
export * from "./scores/index.ts";
export * from "./agreement/index.ts";
