import { healthReply, patternsReply } from "#station";
import type { Parts } from "./parts.ts";
import type { Routes } from "./routes.ts";

/** What the station is built on, and whether its server stands. */
export function addStationRoutes(app: Routes, parts: Parts): void {
  app.get(
    "/api/patterns",
    { config: { permission: "read-log" }, schema: { response: { 200: patternsReply } } },
    async () => ({ patterns: [...parts.patterns] }),
  );
  app.get(
    "/api/health",
    { config: { permission: "see-health" }, schema: { response: { 200: healthReply } } },
    async () => ({ ok: true as const, serverTime: parts.ambient.now(), entries: await parts.store.count() }),
  );
}
