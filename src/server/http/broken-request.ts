import type { Problem } from "#station";
import type { Socket } from "node:net";

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

function replyOf({ status, message, remedy }: Broken): string {
  const problem: Problem = { code: "SV-127", message, remedy };
  const body = JSON.stringify(problem);
  return [
    `HTTP/1.1 ${status}`,
    "content-type: application/json",
    `content-length: ${Buffer.byteLength(body)}`,
    "content-security-policy: default-src 'none'; frame-ancestors 'none'",
    "x-content-type-options: nosniff",
    "referrer-policy: no-referrer",
    "cache-control: no-store",
    "connection: close",
    "",
    body,
  ].join("\r\n");
}
