import type { PasskeySecret } from "../held/device-store.ts";

type Salted = Pick<PasskeySecret, "credential" | "salt">;

/** What a passkey answered: its secret for this device, and the answer as the station reads it. */
export interface PasskeyAnswer extends PasskeySecret {
  readonly challenge: string;
  readonly response: object;
}

/** `refused`: the person turned it away, or there is none here. `cannot`: it derives no secrets. */
export type PasskeyOutcome =
  | { readonly kind: "answered"; readonly answer: PasskeyAnswer }
  | { readonly kind: "refused" }
  | { readonly kind: "cannot" };

/**
 * Asks a passkey on this device for the secret it derives from its salt (the PRF extension of WebAuthn Level 3, section
 * 10.1.4). Needs no network: the secret does not depend on the challenge.
 *
 * @param passkeys - those that may answer, each with its salt
 * @param challenge - the station's, where it could be asked; so that one touch also signs in
 */
export async function askPasskey(passkeys: readonly Salted[], challenge = ownChallenge()): Promise<PasskeyOutcome> {
  const { startAuthentication } = await import("@simplewebauthn/browser");
  const evalByCredential = Object.fromEntries(passkeys.map(({ credential, salt }) => [credential, { first: salt }]));
  const optionsJSON = {
    challenge,
    rpId: location.hostname,
    userVerification: "required" as const,
    allowCredentials: passkeys.map(({ credential }) => ({ id: credential, type: "public-key" as const })),
    extensions: { prf: { evalByCredential } } as object,
  };
  const response = await startAuthentication({ optionsJSON }).catch(() => undefined);
  if (response === undefined) return { kind: "refused" };
  const first = secretIn(response.clientExtensionResults);
  const salt = passkeys.find(({ credential }) => credential === response.id)?.salt;
  if (first === undefined || salt === undefined) return { kind: "cannot" };
  // The secret stays here: the station is given the answer without it.
  const bare = { ...response, clientExtensionResults: {} };
  return { kind: "answered", answer: { credential: response.id, salt, secret: first, challenge, response: bare } };
}

function secretIn(results: object): Uint8Array<ArrayBuffer> | undefined {
  const { prf } = results as { readonly prf?: { readonly results?: { readonly first?: BufferSource } } };
  const first = prf?.results?.first;
  if (first === undefined) return undefined;
  return first instanceof ArrayBuffer ? new Uint8Array(first) : new Uint8Array(first.buffer.slice(0) as ArrayBuffer);
}

function ownChallenge(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(32));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
