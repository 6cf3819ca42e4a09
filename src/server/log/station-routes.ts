import { healthReply, patternsReply, type HealthReply } from "#station";
import { createHealthProbe } from "../http/health.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";

/** What the station is built on, and whether its server stands. */
export function addStationRoutes(app: Routes, parts: Parts): void {
  app.get(
    "/api/patterns",
    { config: { permission: "read-log" }, schema: { response: { 200: patternsReply } } },
    async () => {
      await parts.patternDesk.catchUp();
      return { patterns: [...parts.patterns], mark: parts.patternDesk.mark };
    },
  );
  const probe = createHealthProbe({ count: () => parts.clocks.look().then(() => parts.store.count()) });
  app.get(
    "/api/health",
    { config: { permission: "see-health", asksNobody: true }, schema: { response: { 200: healthReply } } },
    async () => {
      const entries = await probe();
      const { kind, ...doubt } = parts.clocks.verdict();
      const clock = kind === "not-doubted" ? {} : { clock: { kind, ...doubt } as NonNullable<HealthReply["clock"]> };
      return { ok: true as const, serverTime: parts.ambient.now(), entries, ...clock };
    },
  );
}
