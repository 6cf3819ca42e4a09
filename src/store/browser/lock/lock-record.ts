/** How a device's key is wrapped for one person. The person's id says nothing outside the station's log. */
interface WrapBase {
  readonly person: string;
  /** The device's key and what is to be known of its person once it is open, sealed. */
  readonly sealed: ArrayBuffer;
  readonly salt: Uint8Array<ArrayBuffer>;
}

/** Opened by a PIN. */
export interface PinWrap extends WrapBase {
  readonly kind: "pin";
  readonly iterations: number;
}

/** Opened by what a passkey derives from the salt within its own hardware. */
export interface PasskeyWrap extends WrapBase {
  readonly kind: "passkey";
  /** Id of the passkey, base64url. */
  readonly credential: string;
}

export type Wrap = PinWrap | PasskeyWrap;

/**
 * The lock as it stands on the disk, in the clear. `sealing` and `unsealing` are steps on the way: rows of both sorts lie
 * side by side then, and whoever opens the device goes on where it stopped.
 */
export interface LockRecord {
  readonly stage: "sealing" | "sealed" | "unsealing";
  readonly wraps: readonly Wrap[];
  /** Id of the person who opened it last: their PIN is tried first, and what is written unopened is written as theirs. */
  readonly last: string;
}

/** Name of the note that holds the lock. */
export const LOCK_NOTE = "lock";
