import { randomBytes } from "node:crypto";
import { hash, verify } from "@node-rs/argon2";

/**
 * Cost of one PIN check: 19 MiB, two passes, one lane, Argon2id (the library's default algorithm).
 *
 * @source OWASP, Password Storage Cheat Sheet, Argon2id, second recommended setting, FROM MEMORY
 */
const PIN_COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/** Hash of a PIN, with its own salt. */
export function hashPin(pin: string): Promise<string> {
  return hash(pin, PIN_COST);
}

/** True where the PIN is the hashed one. Without a hash it takes as long and is false: a name cannot be fished for. */
export async function isPin(pin: string, hashed: string | undefined): Promise<boolean> {
  if (hashed !== undefined) return verify(hashed, pin);
  await hashPin(pin);
  return false;
}

/** A session's token: 256 bits nobody can guess, for the cookie. */
export function makeToken(): string {
  return randomBytes(32).toString("base64url");
}
