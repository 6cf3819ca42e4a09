import type { Problem } from "#station";
import type { FastifyInstance, FastifyRequest } from "fastify";
import type { ServerResponse } from "node:http";
import type { Socket } from "node:net";
import { BARE_HEADERS, Refusal } from "./problem.ts";

interface Broken {
  readonly status: string;
  readonly message: string;
  readonly remedy: string;
}

/** By the code that Node's reader gives. */
const BROKEN: Readonly<Record<string, Broken>> = {
  ERR_HTTP_REQUEST_TIMEOUT: {
    status: "408 Request Timeout",
    message: "The request did not arrive whole in the time that one may take.",
    remedy: "Send it again, where the network is better.",
  },
  HPE_HEADER_OVERFLOW: {
    status: "431 Request Header Fields Too Large",
    message: "The request cannot be read: its headers are too long.",
    remedy: "Send fewer or shorter headers; in a browser, delete the station's cookies and sign in again.",
  },
  HPE_INVALID_METHOD: {
    status: "400 Bad Request",
    message: "The request cannot be read: its method is none of HTTP.",
    remedy: "Use the method that docs/openapi.json gives for the address, such as GET or POST.",
  },
};

const OTHER: Broken = {
  status: "400 Bad Request",
  message: "The request cannot be read: it is no HTTP as this server speaks it.",
  remedy: "Send it again as HTTP/1.1; where the station has HTTPS, use https:// in the address.",
};

/**
 * Answers on the bare connection what Node's reader of HTTP gives up on before there is a request, and hangs up. Silent
 * where nobody listens any more.
 */
export function answerBroken(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === "ECONNRESET" || socket.destroyed) return;
  if (socket.writable) socket.write(replyOf(BROKEN[error.code ?? ""] ?? OTHER));
  socket.destroy(error);
}

/** Refuses in our own words what Node would refuse with an empty answer. */
export function answerBare(app: FastifyInstance): void {
  app.addHook("onRequest", async (request) => refuseWithoutHost(request));
  app.server.on("checkExpectation", (_request, response: ServerResponse) => {
    const body = JSON.stringify(problemOf(UNMET));
    response.writeHead(417, headersOf(body)).end(body);
  });
}

/** @throws Refusal where a request by HTTP/1.1 names no host, which RFC 9112 (2022), section 3.2, demands */
function refuseWithoutHost({ raw }: FastifyRequest): void {
  const isWithout = raw.headers.host === undefined && raw.httpVersion === "1.1";
  if (isWithout) throw new Refusal("bad-input", problemOf(HOSTLESS));
}

const UNMET: Broken = {
  status: "417 Expectation Failed",
  message: "The request cannot be read: it expects of the server what this one does not do.",
  remedy: "Send it again without the header Expect, or with 100-continue in it.",
};

const HOSTLESS: Broken = {
  status: "400 Bad Request",
  message: "The request cannot be read: it names no host.",
  remedy: "Send it again with the header Host.",
};

function problemOf({ message, remedy }: Broken): Problem {
  return { code: "SV-127", message, remedy };
}

function headersOf(body: string): Readonly<Record<string, string>> {
  return {
    "content-type": "application/json",
    "content-length": String(Buffer.byteLength(body)),
    ...BARE_HEADERS,
    "cache-control": "no-store",
    connection: "close",
  };
}

function replyOf(broken: Broken): string {
  const body = JSON.stringify(problemOf(broken));
  const headers = Object.entries(headersOf(body)).map(([name, value]) => `${name}: ${value}`);
  return [`HTTP/1.1 ${broken.status}`, ...headers, "", body].join("\r\n");
}
