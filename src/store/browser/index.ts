export { BrowserStore, openBrowserStore, type BrowserStoreOptions, type UnsentPhoto } from "./browser-store.ts";
export type { OutboxLine } from "./device-database.ts";
