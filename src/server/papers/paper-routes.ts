import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import { isMonth } from "#base";
import { CARD_LANGUAGES } from "#kit";
import { printCasualty, printReadDoCard } from "./casualty-papers.ts";
import type { Parts } from "../parts.ts";
import { LABEL_SHEETS } from "#station";
import { printCard, printTurnaround } from "./papers.ts";
import { printReceipt } from "./hand-over-papers.ts";
import { printMonth } from "./month-papers.ts";
import { printTraining } from "./people-papers.ts";
import { printVisit } from "./visit-papers.ts";
import { printLabels, printOrders } from "./stock-papers.ts";
import { createQuestionDesk } from "../questions/question-desk.ts";
import { unknownAddress } from "../http/problem.ts";
import type { Routes } from "../routes.ts";

const id = z.string().max(96);
const unitsQuery = z.object({ units: z.enum(["metric", "us"]).default("metric") });
const kitQuery = unitsQuery.extend({ kit: id.optional() });
const cardQuery = z.object({
  pattern: id.optional(),
  language: z.enum(CARD_LANGUAGES).default("en"),
  second: z.enum(CARD_LANGUAGES).optional(),
  kit: z.string().max(40).optional(),
  channel: z.string().max(30).optional(),
});

const labelQuery = z.object({
  place: id,
  of: z.enum(["kits", "shelves"]),
  sheet: z.enum(LABEL_SHEETS.map((sheet) => sheet.id)),
  skip: z.coerce.number().int().min(0).max(60).default(0),
});

const monthQuery = z.object({ month: z.string().max(10).refine(isMonth, { error: 'a month "2027-03"' }) });

/** Papers as PDF, in the units asked for. */
export function addPaperRoutes(app: Routes, parts: Parts): void {
  const log = parts.wholeLog;
  const desk = createQuestionDesk(() => parts.patterns);
  app.addHook("preClose", () => desk.close());
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
    { config: { permission: "print-paper" }, schema: { params: z.object({ pattern: id }), querystring: kitQuery } },
    async (request, reply) =>
      sendPdf(request, reply, await printCard(parts, log, { ...request.params, ...request.query })),
  );
  app.get(
    "/api/paper/casualty/:casualty.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ casualty: id }), querystring: unitsQuery } },
    async (request, reply) => {
      const wanted = { ...request.params, ...request.query, asker: request.id };
      return sendPdf(request, reply, await printCasualty(parts, { log, desk }, wanted));
    },
  );
  app.get(
    "/api/paper/read-do.pdf",
    { config: { permission: "print-paper" }, schema: { querystring: cardQuery } },
    async (request, reply) => sendPdf(request, reply, await printReadDoCard(parts, request.query)),
  );
  app.get("/api/paper/orders.pdf", { config: { permission: "print-paper" } }, async (request, reply) =>
    sendPdf(request, reply, await printOrders(parts, log)),
  );
  app.get(
    "/api/paper/month.pdf",
    { config: { permission: "print-paper" }, schema: { querystring: monthQuery } },
    async (request, reply) => sendPdf(request, reply, await printMonth(parts, log, request.query.month)),
  );
  app.get(
    "/api/paper/training/:person.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ person: id }) } },
    async (request, reply) => sendPdf(request, reply, await printTraining(parts, log, request.params.person)),
  );
  app.get(
    "/api/paper/visit/:visit.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ visit: id }), querystring: unitsQuery } },
    async (request, reply) => {
      const wanted = { id: request.params.visit, units: request.query.units };
      return sendPdf(request, reply, await printVisit(parts, log, wanted));
    },
  );
  app.get(
    "/api/paper/receipt/:entry.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ entry: id }) } },
    async (request, reply) => sendPdf(request, reply, await printReceipt(parts, log, request.params.entry)),
  );
  app.get(
    "/api/paper/labels.pdf",
    { config: { permission: "print-paper" }, schema: { querystring: labelQuery } },
    async (request, reply) => sendPdf(request, reply, await printLabels(parts, log, request.query)),
  );
}

function sendPdf(request: FastifyRequest, reply: FastifyReply, pdf: Uint8Array | undefined): FastifyReply {
  if (pdf === undefined) throw unknownAddress(request);
  return reply.header("cache-control", "no-store").type("application/pdf").send(Buffer.from(pdf));
}
