import { secondsBetween } from "#base";
import type { Person } from "#readiness";
import { hashSecret, type Session, type SignedOut } from "#station";
import type { FastifyReply, FastifyRequest } from "fastify";
import { COOKIE_SECONDS, setCookie } from "../http/cookies.ts";
import { proveDevice, renewKey } from "./device-key.ts";
import { secondsAfter } from "../start/hours.ts";
import type { Parts } from "../parts.ts";
import { makeToken } from "./secrets.ts";

const SESSION_COOKIE = "drykeel_session";
/** Only tells a shut-out device why it is signed out; opens nothing. */
const DEVICE_COOKIE = "drykeel_device";
/** A session ends after so long without use [s]. */
const SESSION_SECONDS = COOKIE_SECONDS;
/** A session in use is renewed at most this often [s]. */
const RENEW_SECONDS = 86_400;

/** Who is asking: a signed-in person of the station, on a device that is not shut out. */
export interface Caller {
  readonly person: Person;
  readonly device: string;
  readonly session: Session;
}

export type Asking = { readonly kind: "caller"; readonly caller: Caller } | NobodyAsking;
export interface NobodyAsking {
  readonly kind: "nobody";
  readonly because: SignedOut["because"];
}

/**
 * Signs a person in on a device: a new session in the store, its token in a cookie that scripts cannot read. A session
 * that the browser had before ends, since its cookie is gone with it.
 */
export async function openSession(
  parts: Parts,
  reply: FastifyReply,
  who: { readonly person: string; readonly device: string },
): Promise<Session> {
  const token = makeToken();
  const created = parts.clocks.soonest();
  const expires = secondsAfter(created, SESSION_SECONDS);
  const session: Session = { tokenHash: hashSecret("session", token), ...who, created, expires };
  const before = reply.request.cookies[SESSION_COOKIE];
  if (before !== undefined) await parts.secrets.removeSession(hashSecret("session", before));
  await parts.secrets.putSession(session);
  setCookie(parts, reply, SESSION_COOKIE, token);
  setCookie(parts, reply, DEVICE_COOKIE, who.device);
  return session;
}

/** Ends the session of a request, here and on the device. */
export async function closeSession(parts: Parts, request: FastifyRequest, reply: FastifyReply): Promise<void> {
  const token = request.cookies[SESSION_COOKIE];
  if (token !== undefined) await parts.secrets.removeSession(hashSecret("session", token));
  void reply.clearCookie(SESSION_COOKIE, { path: "/" });
}

/** Who is asking, judged anew at each request: a shut-out device or a person who left is out at once. */
export async function findAsking(parts: Parts, request: FastifyRequest): Promise<Asking> {
  const token = request.cookies[SESSION_COOKIE];
  const session = token === undefined ? undefined : await parts.secrets.session(hashSecret("session", token));
  await parts.roster.catchUp();
  if (parts.roster.device(session?.device ?? request.cookies[DEVICE_COOKIE] ?? "")?.shutOut)
    return { kind: "nobody", because: "device-shut-out" };
  if (session === undefined) return { kind: "nobody", because: token === undefined ? "never" : "expired" };
  if (isOver(parts, session)) await hearProved(parts, request, session);
  return askingOf(parts, session);
}

function isOver({ clocks }: Pick<Parts, "clocks">, { expires }: Session): boolean {
  return secondsBetween(expires, clocks.soonest()) >= 0;
}

/**
 * A session may look ended because the station's clock is ahead, and only devices can show it: one with its own key is
 * heard before it is refused. Nobody without a session's token and that key is.
 */
async function hearProved(parts: Parts, request: FastifyRequest, { device, person }: Session): Promise<void> {
  const known = parts.roster.person(person);
  if (known === undefined || known.left) return;
  if ((await proveDevice(parts, request, device)) === "proved") parts.clocks.hear(request, { device, person });
}

function askingOf(parts: Parts, session: Session): Asking {
  if (isOver(parts, session)) return { kind: "nobody", because: "expired" };
  const person = parts.roster.person(session.person);
  if (person === undefined || person.left) return { kind: "nobody", because: "person-left" };
  return { kind: "caller", caller: { person, device: session.device, session } };
}

/** Moves the end of a session in use. */
export async function renewSession(
  parts: Parts,
  request: FastifyRequest,
  reply: FastifyReply,
  caller: Caller,
): Promise<Caller> {
  const now = parts.clocks.soonest();
  const left = secondsBetween(now, caller.session.expires);
  if (left > SESSION_SECONDS - RENEW_SECONDS) return caller;
  const session = { ...caller.session, expires: secondsAfter(now, SESSION_SECONDS) };
  await parts.secrets.putSession(session);
  setCookie(parts, reply, SESSION_COOKIE, request.cookies[SESSION_COOKIE]!);
  renewKey(parts, request, reply);
  return { ...caller, session };
}

/** Ends every other session of the caller; @returns the devices on which one ended. */
export async function endOtherSessions(
  { secrets }: Pick<Parts, "secrets">,
  person: string,
  kept?: string,
): Promise<readonly string[]> {
  const others = (await secrets.sessionsOfPerson(person)).filter(({ tokenHash }) => tokenHash !== kept);
  for (const { tokenHash } of others) await secrets.removeSession(tokenHash);
  return [...new Set(others.map(({ device }) => device))];
}
