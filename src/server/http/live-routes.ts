import { LiveListeners } from "./live-listeners.ts";
import { onceMore } from "../start/once-more.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";

/** A comment goes out this often [ms], so that both ends notice a dead connection. */
const BEAT_MS = 20_000;
/** The store is looked at this often [ms] for entries of other processes, where it cannot tell of them itself. */
const LOOK_MS = 2000;

/** Tells open devices which places have new entries, whichever process took them. */
export function addLiveRoute(app: Routes, parts: Parts): void {
  const listeners = new LiveListeners(parts);
  const noteFailure = (cause: unknown) => app.log.error(cause);
  const tell = onceMore(() => listeners.tell(), noteFailure);
  const stopWatching = parts.store.onAppend(tell);
  const timers = [
    setInterval(tell, LOOK_MS),
    setInterval(
      onceMore(() => listeners.beat(), noteFailure),
      BEAT_MS,
    ),
  ];
  app.get("/api/log/live", { config: { permission: "read-log" } }, (request, reply) => listeners.add(request, reply));
  app.addHook("preClose", async () => {
    timers.forEach(clearInterval);
    stopWatching();
    listeners.close();
  });
}
