import type { FastifyInstance, FastifyReply, FastifyRequest, RawRequestDefaultExpression } from "fastify";
import { uuidv7 } from "uuidv7";

/** Names a request in the log and in its answer, so that one can be found from the other. */
const REQUEST_ID = "x-request-id";
/** Ids given by a proxy are taken where they can do no harm in a log. */
const PLAIN_ID = /^[\w.-]{1,64}$/;

/** The id a proxy gave, where it is a plain one; a new one otherwise. */
export function nameRequest(request: RawRequestDefaultExpression): string {
  const given = request.headers[REQUEST_ID];
  return typeof given === "string" && PLAIN_ID.test(given) ? given : uuidv7();
}

/**
 * Writes one line of JSON a request, at level info: id, method, the route's pattern, status and time. Neither address
 * nor body is in it: an invite's code stands in the first, people's words in the second.
 */
export function logRequests(app: FastifyInstance): void {
  app.addHook("onRequest", async (request, reply) => void reply.header(REQUEST_ID, request.id));
  app.addHook("onResponse", async (request, reply) => {
    const { method, routeOptions } = request;
    const ms = Math.round(reply.elapsedTime);
    const line = { method, route: routeOptions.url ?? "none", status: reply.statusCode, ms };
    request.log.info(line, "answered");
    const event = securityEventOf(request, reply);
    const level = event?.endsWith(" done") ? "info" : "warn";
    if (event !== undefined) request.log[level]({ event, ...line, ...whoAsked(request) }, "security");
  });
}

/** Lines of the permission table at which somebody shows who they are, or changes how they do. */
const WAYS_IN: ReadonlySet<string> = new Set([
  "sign-in",
  "sign-out",
  "invite",
  "change-own-pin",
  "add-own-passkey",
  "remove-own-passkey",
]);

/** What of a request belongs in a log of security: ways in and out however they ended, and what was refused or slowed. */
function securityEventOf(request: FastifyRequest, { statusCode }: FastifyReply): string | undefined {
  const { url = "", config } = request.routeOptions;
  const { permission } = config;
  if (statusCode === 403) return "refused";
  if (statusCode === 429) return "slowed";
  if (permission === undefined || !WAYS_IN.has(permission)) return undefined;
  // To ask for a challenge is not yet to answer it.
  if (request.method === "GET" || url.endsWith("/options")) return undefined;
  return `${permission} ${statusCode < 400 ? "done" : "failed"}`;
}

/** Ids only: whose they are stands in the station's log. */
function whoAsked({ asking }: FastifyRequest): { readonly person?: string; readonly device?: string } {
  return asking?.kind === "caller" ? { person: asking.caller.person.id, device: asking.caller.device } : {};
}
