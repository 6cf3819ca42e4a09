/**
 * Whether this browser knows passkeys, by the test of Web Authentication level 3, 5.1. The library that asks for one is
 * fetched when one is asked for: it is no part of the first screen.
 */
export function hasPasskeys(): boolean {
  return typeof globalThis.PublicKeyCredential === "function";
}
