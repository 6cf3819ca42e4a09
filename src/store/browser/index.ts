export { BrowserStore, openBrowserStore, type BrowserStoreOptions, type UnsentPhoto } from "./browser-store.ts";
export type { Branch, LostLine } from "./branch-shelf.ts";
export type { OutboxLine } from "./device-database.ts";
export {
  PIN_ITERATIONS,
  type Opened,
  type Owner,
  type OnProgress,
  type PasskeySecret,
  type Progress,
} from "./lock/index.ts";
