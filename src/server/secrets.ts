import { createHash, randomBytes, randomInt } from "node:crypto";
import { hash, verify } from "@node-rs/argon2";

/**
 * Cost of one PIN check: 19 MiB, two passes, one lane, Argon2id (the library's default algorithm).
 *
 * @source OWASP, Password Storage Cheat Sheet, Argon2id, second recommended setting, FROM MEMORY
 */
const PIN_COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/** Letters and digits that nobody mistakes for one another when read aloud or copied by hand. */
const CODE_ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

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

/** A code to be read aloud or typed: twelve letters and digits in threes of four, 60 bits. */
export function makeCode(): string {
  const letters = Array.from({ length: 12 }, () => CODE_ALPHABET[randomInt(CODE_ALPHABET.length)]);
  return [0, 4, 8].map((from) => letters.slice(from, from + 4).join("")).join("-");
}

/** The code as made, however it was typed: case, dashes and look-alike letters do not matter. */
export function readCode(typed: string): string {
  const plain = typed.toUpperCase().replace(/[^0-9A-Z]/g, "");
  return plain.replaceAll("O", "0").replace(/[IL]/g, "1").replaceAll("U", "V");
}

/** What the store keeps of a token or code: from this nobody gets the token back. */
export function hashSecret(purpose: string, secret: string): string {
  return createHash("sha256").update(`${purpose}\n${secret}`).digest("hex");
}
