import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import { printCasualty, printReadDoCard } from "./casualty-papers.ts";
import type { Parts } from "./parts.ts";
import { printCard, printTurnaround } from "./papers.ts";
import { unknownAddress } from "./problem.ts";
import type { Routes } from "./routes.ts";
import { WholeLog } from "./whole-log.ts";

const id = z.string().max(96);
const unitsQuery = z.object({ units: z.enum(["metric", "us"]).default("metric") });

/** Papers as PDF, in the units asked for. */
export function addPaperRoutes(app: Routes, parts: Parts): void {
  const log = new WholeLog(parts.store, parts.patterns);
  app.get(
    "/api/paper/turnaround/:kit/:turnaround.pdf",
    {
      config: { permission: "print-paper" },
      schema: { params: z.object({ kit: id, turnaround: id }), querystring: unitsQuery },
    },
    async (request, reply) =>
      sendPdf(request, reply, await printTurnaround(parts, log, { ...request.params, ...request.query })),
  );
  app.get(
    "/api/paper/card/:pattern.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ pattern: id }), querystring: unitsQuery } },
    async (request, reply) => sendPdf(request, reply, await printCard(parts, { ...request.params, ...request.query })),
  );
  app.get(
    "/api/paper/casualty/:casualty.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ casualty: id }), querystring: unitsQuery } },
    async (request, reply) =>
      sendPdf(request, reply, await printCasualty(parts, log, { ...request.params, ...request.query })),
  );
  app.get("/api/paper/read-do.pdf", { config: { permission: "print-paper" } }, async (request, reply) =>
    sendPdf(request, reply, await printReadDoCard(parts)),
  );
}

function sendPdf(request: FastifyRequest, reply: FastifyReply, pdf: Uint8Array | undefined): FastifyReply {
  if (pdf === undefined) throw unknownAddress(request);
  return reply.header("cache-control", "no-store").type("application/pdf").send(Buffer.from(pdf));
}
