export * from "./drill-acts.ts";
export * from "./drill-book.ts";
