import { join } from "./packing.ts";

/** Bytes of the number that each sealing draws anew: 96 bits, as SP 800-38D section 8.2.2 has it for random ones. */
const NONCE_BYTES = 12;
const AES = "AES-GCM";

/** A fresh key for everything that a device keeps: AES-GCM with 256 bits, drawn by the browser. */
export function makeDataKey(): Promise<CryptoKey> {
  return crypto.subtle.generateKey({ name: AES, length: 256 }, true, ["encrypt", "decrypt"]);
}

/** A key from its 32 bytes. */
export function readKey(bytes: Uint8Array<ArrayBuffer>, isShown = false): Promise<CryptoKey> {
  return crypto.subtle.importKey("raw", bytes, AES, isShown, ["encrypt", "decrypt"]);
}

/**
 * Encrypts, so that a change of what was sealed or of what it was sealed for is found out.
 *
 * @param about - what the bytes belong to; it is not kept, and must be given again to unseal
 */
export async function seal(
  key: CryptoKey,
  bytes: Uint8Array<ArrayBuffer>,
  about: Uint8Array<ArrayBuffer>,
): Promise<ArrayBuffer> {
  const nonce = crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const sealed = await crypto.subtle.encrypt({ name: AES, iv: nonce, additionalData: about }, key, bytes);
  return join([nonce, new Uint8Array(sealed)]).buffer;
}

/** What was sealed; undefined where this is another key, or the bytes or what they belong to were changed. */
export async function unseal(
  key: CryptoKey,
  sealed: ArrayBuffer,
  about: Uint8Array<ArrayBuffer>,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const iv = new Uint8Array(sealed, 0, NONCE_BYTES);
  const content = new Uint8Array(sealed, NONCE_BYTES);
  try {
    return new Uint8Array(await crypto.subtle.decrypt({ name: AES, iv, additionalData: about }, key, content));
  } catch (cause) {
    if (cause instanceof DOMException && cause.name === "OperationError") return undefined;
    throw cause;
  }
}
