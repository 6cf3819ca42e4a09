import { linksReply, newLinkReply, wallLinkRequest, wallOf, withdrawLinkRequest, type LinksReply } from "#station";
import type { FastifyRequest } from "fastify";
import { originOf } from "../http/address.ts";
import { Refusal, unknownAddress } from "../http/problem.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";
import { LinkDesk } from "./link-desk.ts";

/** A wall asks once a minute; several may stand behind one address. */
const FEW = { rateLimit: { max: 60, timeWindow: "1 minute" } } as const;

/**
 * The wall of a place, for whoever shows its link's secret, and nothing else; keepers make and withdraw such links. The
 * secret comes in a header: the page has it from behind the `#` of its address, which no browser sends.
 */
export function addWallRoutes(app: Routes, parts: Parts): void {
  const desk = new LinkDesk(parts.secrets, parts.ambient);
  app.get("/api/wall", { config: { permission: "see-wall", asksNobody: true, ...FEW } }, async (request, reply) => {
    const place = await placeShown(desk, request);
    const fold = await parts.wholeLog.read();
    const wall = wallOf(fold.read(), place, parts.ambient.now());
    if (wall === undefined) throw unknownAddress(request);
    return reply.header("cache-control", "no-store").send(wall);
  });
  app.get(
    "/api/wall/links",
    { config: { permission: "keep-wall-links" }, schema: { response: { 200: linksReply } } },
    async (): Promise<LinksReply> => ({ links: await everyLink(parts, desk) }),
  );
  app.post(
    "/api/wall/links",
    { config: { permission: "keep-wall-links" }, schema: { body: wallLinkRequest, response: { 200: newLinkReply } } },
    async (request) => {
      const { place } = request.body;
      if (!(await openPlaces(parts)).includes(place)) throw noSuchPlace();
      const made = await desk.make("wall", place);
      if (made === undefined) throw tooManyLinks();
      return { id: made.id, link: `${originOf(parts, request)}/wall#${made.secret}` };
    },
  );
  app.delete(
    "/api/wall/links/:id",
    { config: { permission: "keep-wall-links" }, schema: { params: withdrawLinkRequest } },
    async (request, reply) => {
      const { id } = request.params;
      const link = (await everyLink(parts, desk)).find((one) => one.id === id);
      if (link === undefined || !(await desk.withdraw("wall", link.place!, id))) throw unknownAddress(request);
      return reply.code(204).send();
    },
  );
}

async function placeShown(desk: LinkDesk, request: FastifyRequest): Promise<string> {
  const secret = /^Bearer (\S{1,100})$/.exec(request.headers.authorization ?? "")?.[1];
  const place = secret === undefined ? undefined : await desk.opens("wall", secret);
  if (place === undefined) throw unknownAddress(request);
  return place;
}

async function openPlaces({ wholeLog }: Parts): Promise<readonly string[]> {
  return (await wholeLog.read()).read().places.flatMap(({ id, closed }) => (closed ? [] : [id]));
}

/** Those of closed places too, so that they can be withdrawn. */
async function everyLink({ wholeLog }: Parts, desk: LinkDesk): Promise<LinksReply["links"]> {
  const { places } = (await wholeLog.read()).read();
  const all = await Promise.all(
    places.map(async ({ id: place }) =>
      (await desk.of("wall", place)).map(({ id, created }) => ({ id, place, created })),
    ),
  );
  return all.flat();
}

function noSuchPlace(): Refusal {
  return new Refusal("not-found", {
    code: "SV-210",
    message: "The station has no open place of that id.",
    remedy: "Choose a place of the station.",
  });
}

/** As many links as one thing may have at once. */
export function tooManyLinks(): Refusal {
  return new Refusal("conflict", {
    code: "SV-211",
    message: "There are ten links to this already.",
    remedy: "Withdraw one that is not used any more.",
  });
}
