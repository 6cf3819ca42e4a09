import compress from "@fastify/compress";
import cookie from "@fastify/cookie";
import helmet from "@fastify/helmet";
import rateLimit from "@fastify/rate-limit";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";

const SELF = "'self'";
const NONE = "'none'";
/** How long a browser insists on HTTPS once it has been told to [s]: a year. */
const INSIST_SECONDS = 31_536_000;

/**
 * Headers, cookies, compression and the slow lane for sign-in, before any route.
 *
 * Scripts come from here only and never inline. `wasm-unsafe-eval` lets the code reader's WebAssembly compile; it
 * allows no script. Styles may be inline: the touch library sets some, and they cannot run.
 *
 * @param encrypted - true where people reach the station over HTTPS; only then may a browser be told to insist on it
 */
export async function raiseShield(app: FastifyInstance, encrypted: boolean): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives: contentSources(encrypted) },
    strictTransportSecurity: encrypted ? { maxAge: INSIST_SECONDS, includeSubDomains: false } : false,
    // Browsers ignore these two over plain HTTP, and complain.
    crossOriginOpenerPolicy: encrypted ? { policy: "same-origin" } : false,
    originAgentCluster: encrypted,
    referrerPolicy: { policy: "no-referrer" },
  });
  app.addHook("onRequest", keepNothing);
  await app.register(cookie);
  await app.register(compress, { global: true, threshold: 1024, encodings: ["br", "gzip"] });
  await app.register(rateLimit, { global: false, max: 30, timeWindow: "1 minute" });
}

/** By the route, since one address can be spelled in many ways. What the station answers belongs in the app's own store, which can be locked, and not in the browser's cache beside it. */
async function keepNothing({ routeOptions }: FastifyRequest, reply: FastifyReply): Promise<void> {
  if (routeOptions.url?.startsWith("/api/") === true) void reply.header("cache-control", "no-store");
}

function contentSources(encrypted: boolean): Record<string, string[]> {
  return {
    "default-src": [SELF],
    "script-src": [SELF, "'wasm-unsafe-eval'"],
    "worker-src": [SELF, "blob:"],
    "style-src": [SELF, "'unsafe-inline'"],
    "img-src": [SELF, "blob:", "data:"],
    "media-src": [SELF, "blob:"],
    "font-src": [SELF],
    "connect-src": [SELF],
    "manifest-src": [SELF],
    "object-src": [NONE],
    "base-uri": [NONE],
    "form-action": [SELF],
    "frame-ancestors": [NONE],
    ...(encrypted ? { "upgrade-insecure-requests": [] } : {}),
  };
}
