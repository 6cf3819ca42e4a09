import { hashText } from "#log";
import type { Invite, SecretStore } from "./ports.ts";

/** What a ticket opens. One made for one purpose opens no other. */
export type Purpose = "invite" | "setup" | "passkey-register" | "passkey-sign-in";

/** How long each is good for [s]. */
const GOOD_FOR: Readonly<Record<Purpose, number>> = {
  invite: 7 * 86_400,
  setup: 30 * 86_400,
  "passkey-register": 300,
  "passkey-sign-in": 300,
};

/**
 * Single-use secrets with an end: invites, the set-up code, passkey challenges. They live in the store, so any server
 * process takes what another issued, and each is taken once.
 */
export async function issueTicket(
  secrets: SecretStore,
  ticket: { readonly purpose: Purpose; readonly secret: string; readonly person: string; readonly by: string },
  now: string,
): Promise<{ readonly expires: string }> {
  const { purpose, secret, person, by } = ticket;
  const expires = secondsAfter(now, GOOD_FOR[purpose]);
  await secrets.putInvite({ codeHash: hashSecret(purpose, secret), person, by, expires });
  return { expires };
}

/** Takes a ticket: whom it was for, or undefined where it was never issued, was used or has expired. */
export async function takeTicket(
  secrets: SecretStore,
  purpose: Purpose,
  secret: string,
  now: string,
): Promise<Invite | undefined> {
  return secrets.takeInvite(hashSecret(purpose, secret), now);
}

/** What the store keeps of a token or code: from this nobody gets the token back. */
export function hashSecret(purpose: string, secret: string): string {
  return hashText(`${purpose}\n${secret}`);
}

/** Letters and digits that nobody mistakes for one another when read aloud or copied by hand. */
const CODE_ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * A code to be read aloud or typed: twelve letters and digits in threes of four, 60 bits.
 *
 * @param draw - an even draw from 0 up to the number given, by a source nobody can foresee
 */
export function makeCode(draw: (below: number) => number): string {
  const letters = Array.from({ length: 12 }, () => CODE_ALPHABET[draw(CODE_ALPHABET.length)]);
  return [0, 4, 8].map((from) => letters.slice(from, from + 4).join("")).join("-");
}

/** The code as made, however it was typed: case, dashes and look-alike letters do not matter. */
export function readCode(typed: string): string {
  const plain = typed.toUpperCase().replace(/[^0-9A-Z]/g, "");
  return plain.replaceAll("O", "0").replace(/[IL]/g, "1").replaceAll("U", "V");
}

/** The instant so many seconds after another, as RFC 3339 UTC. */
function secondsAfter(instant: string, seconds: number): string {
  return new Date(Date.parse(instant) + seconds * 1000).toISOString();
}
