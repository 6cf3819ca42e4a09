export * from "./preferences.ts";
export * from "./night-veil.tsx";
