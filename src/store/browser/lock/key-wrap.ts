import { readKey, seal, unseal } from "./cipher.ts";
import type { PasskeyWrap, PinWrap, Wrap } from "./lock-record.ts";
import { join } from "./packing.ts";

/**
 * How often the hash runs for one try of a PIN.
 *
 * @source OWASP Password Storage Cheat Sheet, section PBKDF2: 600,000 for HMAC-SHA-256
 */
export const PIN_ITERATIONS = 600_000;

const KEY_BYTES = 32;
const SALT_BYTES = 16;
/** The salt of a passkey's own derivation (WebAuthn Level 3, section 10.1.4) [bytes]. */
const PASSKEY_SALT_BYTES = 32;
const ABOUT = new TextEncoder().encode("drykeel key wrap 1");

/** What a wrap gives once it is open. */
export interface Opened {
  readonly key: CryptoKey;
  readonly person: string;
  /** What was put beside the key for this person. */
  readonly memo: unknown;
}

export type Owner = Pick<Opened, "person" | "memo">;

/** Wraps the device's key so that this PIN opens it. */
export async function wrapForPin(
  key: CryptoKey,
  owner: Owner,
  pin: string,
  iterations = PIN_ITERATIONS,
): Promise<PinWrap> {
  const salt = crypto.getRandomValues(new Uint8Array(SALT_BYTES));
  const sealed = await wrapWith(await keyOfPin(pin, { salt, iterations }), key, owner);
  return { kind: "pin", person: owner.person, iterations, salt, sealed };
}

/** What this PIN opens; undefined where it is not this one. */
export async function openWithPin(wrap: PinWrap, pin: string): Promise<Opened | undefined> {
  return unwrapWith(await keyOfPin(pin, wrap), wrap);
}

/** A salt to give a passkey, for it to derive its secret from. */
export function makePasskeySalt(): Uint8Array<ArrayBuffer> {
  return crypto.getRandomValues(new Uint8Array(PASSKEY_SALT_BYTES));
}

/** What a passkey derived, from which salt. */
export interface PasskeySecret {
  readonly credential: string;
  readonly salt: Uint8Array<ArrayBuffer>;
  /** 32 bytes that only this passkey can derive. */
  readonly secret: Uint8Array<ArrayBuffer>;
}

/** Wraps the device's key so that this passkey opens it. */
export async function wrapForPasskey(key: CryptoKey, owner: Owner, given: PasskeySecret): Promise<PasskeyWrap> {
  const { credential, salt, secret } = given;
  const sealed = await wrapWith(await keyOfSecret(secret), key, owner);
  return { kind: "passkey", person: owner.person, credential, salt, sealed };
}

/** What this passkey's secret opens; undefined where it is another's. */
export async function openWithPasskey(wrap: PasskeyWrap, secret: PasskeySecret["secret"]): Promise<Opened | undefined> {
  return unwrapWith(await keyOfSecret(secret), wrap);
}

async function wrapWith(wrapping: CryptoKey, key: CryptoKey, { person, memo }: Owner): Promise<ArrayBuffer> {
  const raw = new Uint8Array(await crypto.subtle.exportKey("raw", key));
  const text = new TextEncoder().encode(JSON.stringify({ person, memo }));
  return seal(wrapping, join([raw, text]), ABOUT);
}

async function unwrapWith(wrapping: CryptoKey, { sealed }: Wrap): Promise<Opened | undefined> {
  const plain = await unseal(wrapping, sealed, ABOUT);
  if (plain === undefined) return undefined;
  const { person, memo } = JSON.parse(new TextDecoder().decode(plain.subarray(KEY_BYTES))) as Owner;
  return { key: await readKey(plain.slice(0, KEY_BYTES), true), person, memo };
}

/** PBKDF2 with HMAC-SHA-256 (RFC 8018 section 5.2). */
async function keyOfPin(pin: string, { salt, iterations }: Pick<PinWrap, "salt" | "iterations">): Promise<CryptoKey> {
  const from = await crypto.subtle.importKey("raw", new TextEncoder().encode(pin), "PBKDF2", false, ["deriveBits"]);
  const how = { name: "PBKDF2", hash: "SHA-256", salt, iterations };
  return readKey(new Uint8Array(await crypto.subtle.deriveBits(how, from, 8 * KEY_BYTES)));
}

/** HKDF with SHA-256 (RFC 5869): the passkey's secret serves this one purpose. */
async function keyOfSecret(secret: Uint8Array<ArrayBuffer>): Promise<CryptoKey> {
  const from = await crypto.subtle.importKey("raw", secret, "HKDF", false, ["deriveBits"]);
  const how = { name: "HKDF", hash: "SHA-256", salt: new Uint8Array(), info: ABOUT };
  return readKey(new Uint8Array(await crypto.subtle.deriveBits(how, from, 8 * KEY_BYTES)));
}
