import { calendarOf, linksReply, newLinkReply, withdrawLinkRequest, type LinksReply } from "#station";
import { z } from "zod";
import { originOf } from "../http/address.ts";
import { callerOf } from "../http/gate.ts";
import { unknownAddress } from "../http/problem.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";
import { LinkDesk } from "./link-desk.ts";
import { tooManyLinks } from "./wall-routes.ts";

/** A calendar program asks every few hours; several may stand behind one address. */
const FEW = { rateLimit: { max: 60, timeWindow: "1 minute" } } as const;
const feed = z.object({ secret: z.string().max(100) });

/**
 * The calendar of a person, for whoever has its address and nothing else; each person makes and withdraws their own. A
 * calendar program sends no header, so the secret is part of the address: it is written to no log, and an address that
 * was guessed or withdrawn is answered as one that is not there.
 */
export function addCalendarRoutes(app: Routes, parts: Parts): void {
  const desk = new LinkDesk(parts.secrets, parts.ambient);
  const own = { config: { permission: "keep-own-calendar" } } as const;
  app.get(
    "/api/calendar/:secret.ics",
    { config: { permission: "see-calendar", asksNobody: true, ...FEW }, schema: { params: feed } },
    async (request, reply) => {
      const text = await feedOf(parts, desk, request.params.secret);
      if (text === undefined) throw unknownAddress(request);
      return reply.header("cache-control", "no-store").type("text/calendar; charset=utf-8").send(text);
    },
  );
  app.get(
    "/api/calendar/links",
    { ...own, schema: { response: { 200: linksReply } } },
    async (request): Promise<LinksReply> => {
      const held = await desk.of("calendar", callerOf(request).person.id);
      return { links: held.map(({ id, created }) => ({ id, created })) };
    },
  );
  app.post("/api/calendar/links", { ...own, schema: { response: { 200: newLinkReply } } }, async (request) => {
    const made = await desk.make("calendar", callerOf(request).person.id);
    if (made === undefined) throw tooManyLinks();
    return { id: made.id, link: `${originOf(parts, request)}/api/calendar/${made.secret}.ics` };
  });
  app.delete("/api/calendar/links/:id", { ...own, schema: { params: withdrawLinkRequest } }, async (request, reply) => {
    const isOwn = await desk.withdraw("calendar", callerOf(request).person.id, request.params.id);
    if (!isOwn) throw unknownAddress(request);
    return reply.code(204).send();
  });
}

async function feedOf(parts: Parts, desk: LinkDesk, secret: string): Promise<string | undefined> {
  const person = await desk.opens("calendar", secret);
  if (person === undefined) return undefined;
  const now = parts.ambient.now();
  const view = calendarOf((await parts.wholeLog.read()).read(), person, now);
  if (view === undefined) return undefined;
  const { writeCalendar } = await import("#paper");
  return writeCalendar(view, now);
}
