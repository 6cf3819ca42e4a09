import type { FastifyReply } from "fastify";

/** Cookies last so long unless renewed [s]: a phone in a locker must still be signed in next season. */
export const COOKIE_SECONDS = 180 * 86_400;
/** A device's key lasts as long as browsers keep a cookie at all [s]: 400 days. */
const LASTING_SECONDS = 400 * 86_400;

interface Site {
  readonly origin?: string;
}

/** A cookie that scripts cannot read and that no other site's page sends along. */
export function setCookie(
  site: Site,
  reply: FastifyReply,
  name: string,
  value: string,
  seconds = COOKIE_SECONDS,
): void {
  void reply.setCookie(name, value, {
    path: "/",
    httpOnly: true,
    sameSite: "strict",
    secure: isEncrypted(site),
    maxAge: seconds,
  });
}

export function setLastingCookie(site: Site, reply: FastifyReply, name: string, value: string): void {
  setCookie(site, reply, name, value, LASTING_SECONDS);
}

/** True where people reach the station over HTTPS, so that its cookies must never travel without. */
export function isEncrypted({ origin }: Site): boolean {
  return origin?.startsWith("https://") ?? false;
}
