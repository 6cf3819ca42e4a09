export * from "./ports.ts";
