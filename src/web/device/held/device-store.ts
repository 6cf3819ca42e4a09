/** What this device keeps on its own disk: the station's lines, its own not yet sent, photos, and notes. */
export type {
  BrowserStore as DeviceStore,
  LostLine,
  OnProgress,
  OutboxLine,
  PasskeySecret,
  Progress,
  UnsentPhoto,
} from "#store/browser";
