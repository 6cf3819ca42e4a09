/**
 * Who may import whom inside the web, from below to above. The one list: a new line here is a decision.
 * A room is a folder of `src/web`; each folder of `pages` is a room of its own; "." are the files that start the app.
 */
const VIEWS = [
  "camera",
  "watched",
  "loading",
  "theme",
  "language",
  "drawing",
  "timing",
  "worker",
  "device",
  "parts",
  "act",
  "kit-view",
  "rig",
  "way-in",
];

export const WEB_ROOMS: Readonly<Record<string, readonly string[]>> = {
  camera: [],
  watched: [],
  loading: [],
  theme: ["watched"],
  language: ["loading", "theme"],
  drawing: ["language", "parts"],
  timing: ["language", "parts"],
  device: ["theme", "watched"],
  worker: ["device"],
  parts: ["device", "language", "loading", "theme", "watched"],
  act: ["device", "language", "parts", "timing", "watched"],
  "kit-view": ["act", "camera", "device", "drawing", "language", "parts", "timing"],
  rig: ["language", "parts"],
  "way-in": ["device", "language", "parts"],
  "pages/board": VIEWS,
  "pages/casualty": VIEWS,
  "pages/delivery": VIEWS,
  "pages/drills": VIEWS,
  "pages/fault": VIEWS,
  "pages/findings": VIEWS,
  "pages/kit": VIEWS,
  "pages/labels": VIEWS,
  "pages/lock": VIEWS,
  "pages/outbox": VIEWS,
  "pages/pattern": VIEWS,
  "pages/people": VIEWS,
  "pages/review": VIEWS,
  "pages/settings": VIEWS,
  "pages/sheets": VIEWS,
  "pages/sign-in": VIEWS,
  "pages/stock": VIEWS,
  "pages/timeline": VIEWS,
  "pages/turnaround": VIEWS,
  "pages/visits": VIEWS,
  "pages/wall": VIEWS,
  "pages/work": VIEWS,
  "pages/year": VIEWS,
  ".": ["device", "language", "loading", "parts", "theme", "pages/casualty", "pages/delivery", "pages/lock"],
};

/** The room of the web that a file belongs to. */
export function webRoomOf(path: string): string {
  const [first, second, ...rest] = path.replace("src/web/", "").split("/");
  if (second === undefined) return ".";
  return first === "pages" && rest.length > 0 ? `pages/${second}` : first!;
}
