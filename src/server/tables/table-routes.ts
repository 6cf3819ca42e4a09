import { sourceOfFold, TABLE_IDS, tableCsv } from "#store/sheets";
import { Readable } from "node:stream";
import { z } from "zod";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";

/** Tables as comma-separated values. */
export function addTableRoutes(app: Routes, parts: Parts): void {
  app.get(
    "/api/table/:table.csv",
    {
      config: { permission: "export-log" },
      schema: { params: z.object({ table: z.enum(TABLE_IDS) }) },
    },
    async ({ params }, reply) => {
      const source = sourceOfFold(await parts.wholeLog.read(), parts.ambient.now());
      const name = `${params.table}-${source.today}.csv`;
      return reply
        .header("cache-control", "no-store")
        .header("content-disposition", `attachment; filename="${name}"`)
        .type("text/csv; charset=utf-8; header=present")
        .send(Readable.from(tableCsv(params.table, source)));
    },
  );
}
