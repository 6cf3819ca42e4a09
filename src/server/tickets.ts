import type { SecretStore } from "#station";
import { secondsAfter } from "./hours.ts";
import { hashSecret } from "./secrets.ts";

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
): Promise<{ readonly person: string } | undefined> {
  return secrets.takeInvite(hashSecret(purpose, secret), now);
}
