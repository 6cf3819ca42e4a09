export * from "./ports.ts";
export * from "./wire.ts";
