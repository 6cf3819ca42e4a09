import { PROBLEM } from "#station";
import type { Reply } from "./server-door.ts";

/** How it stands between this device and the server. */
export type Reach =
  | { readonly kind: "unknown" }
  | { readonly kind: "online" }
  | { readonly kind: "offline"; readonly because: string }
  /** The server no longer takes this device's word for who is using it; lines stay here. */
  | { readonly kind: "signed-out"; readonly code: string; readonly message: string; readonly remedy: string };

export const ONLINE: Reach = { kind: "online" };

const SIGNED_OUT_CODES: ReadonlySet<string> = new Set([PROBLEM.signedOut, PROBLEM.deviceShutOut, PROBLEM.personLeft]);

/** What a reply that is no answer says of the server. */
export function reachOf(reply: Exclude<Reply<unknown>, { kind: "answered" }>): Reach {
  if (reply.kind === "unreachable") return { kind: "offline", because: reply.because };
  const { code, message, remedy } = reply.problem;
  if (SIGNED_OUT_CODES.has(code)) return { kind: "signed-out", code, message, remedy };
  return { kind: "offline", because: `${message} ${remedy}` };
}
