import { PROBLEM, type Credential } from "#station";
import type { AuthenticationResponseJSON, RegistrationResponseJSON } from "@simplewebauthn/server";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";

/** What a passkey is bound to: the address people type and its host name. */
export interface Site {
  readonly origin: string;
  readonly name: string;
}

/** The library, loaded when the first passkey is used: a start must not wait for its certificate readers. */
export function loadWebauthn(): Promise<typeof import("@simplewebauthn/server")> {
  return import("@simplewebauthn/server");
}

/** A new passkey as the store keeps it, once its answer is proved. */
export async function readNewPasskey(
  site: Site,
  challenge: string,
  response: RegistrationResponseJSON,
): Promise<Pick<Credential, "id" | "kind" | "secret" | "counter" | "transports">> {
  const { verifyRegistrationResponse } = await loadWebauthn();
  const proof = await orUnknown(() =>
    verifyRegistrationResponse({
      response,
      expectedChallenge: challenge,
      expectedOrigin: site.origin,
      expectedRPID: site.name,
    }),
  );
  if (!proof.verified) throw unknownPasskey();
  const { id, publicKey, counter, transports } = proof.registrationInfo.credential;
  const secret = Buffer.from(publicKey).toString("base64url");
  return { id, kind: "passkey", secret, counter, ...(transports === undefined ? {} : { transports }) };
}

/** The person whose passkey answered; a copied passkey, whose counter runs back, opens nothing. */
export async function provePasskey(
  parts: Parts,
  site: Site,
  challenge: string,
  response: AuthenticationResponseJSON,
): Promise<string> {
  const held = await parts.secrets.credential(response.id);
  if (held === undefined || held.kind !== "passkey") throw unknownPasskey();
  const { verifyAuthenticationResponse } = await loadWebauthn();
  const proof = await orUnknown(() =>
    verifyAuthenticationResponse({
      response,
      expectedChallenge: challenge,
      expectedOrigin: site.origin,
      expectedRPID: site.name,
      credential: { id: held.id, publicKey: Buffer.from(held.secret, "base64url"), counter: held.counter },
    }),
  );
  const person = parts.roster.person(held.person);
  if (!proof.verified || person === undefined || person.left) throw unknownPasskey();
  await parts.secrets.putCredential({ ...held, counter: proof.authenticationInfo.newCounter });
  return person.id;
}

/** The library throws at an answer it cannot read; whoever sent it learns no more than that it opens nothing. */
async function orUnknown<T>(prove: () => Promise<T>): Promise<T> {
  try {
    return await prove();
  } catch {
    throw unknownPasskey();
  }
}

function unknownPasskey(): Refusal {
  return new Refusal("signed-out", {
    code: PROBLEM.wrongPin,
    message: "This passkey is not one the station knows.",
    remedy: "Sign in by name and PIN, then add the passkey again.",
  });
}
