export * from "./pattern.ts";
