import type { Fault } from "#base";

// The words of the wire that a device acts upon, apart from the schemas: a device need not carry those.

/** The most entries in one push. */
export const PUSH_LIMIT = 10_000;
/** The most bytes in one push; more is refused with 413 and the advice to send in parts. */
export const PUSH_BYTES_LIMIT = 16 * 1024 * 1024;
/** The most bytes in one photo. Devices downscale to a longest side of 1600 px, which stays far below. */
export const PHOTO_BYTES_LIMIT = 5 * 1024 * 1024;
/** The most entries in one page of a pull. */
export const PULL_LIMIT = 5000;

/** What every refusal looks like. `faults` for bad input, `message` for everything else; `remedy` always. */
export interface Problem {
  readonly code: string;
  readonly message: string;
  readonly remedy: string;
  readonly faults?: readonly Fault[];
  /** Seconds to wait, where waiting helps. */
  readonly wait?: number;
  /** The version that the station takes next, where it refuses another of the pattern. */
  readonly nextVersion?: number;
}

/** Problem codes a device acts upon by itself. */
export const PROBLEM = {
  /** 401: sign in again; entries stay on the device and are sent afterwards. */
  signedOut: "SV-101",
  /** 403: this device was shut out; entries stay on the device and can be exported. */
  deviceShutOut: "SV-102",
  /** 403: the person has left the station. */
  personLeft: "SV-103",
  /** 403: the role may not do this. */
  notPermitted: "SV-104",
  /** 401: name or PIN is wrong. */
  wrongPin: "SV-110",
  /** 429: too many failures; `wait` says how long. */
  slowed: "SV-111",
  /** 423: this person is locked on this device until an administrator invites again, or `wait` has passed. */
  locked: "SV-112",
  /** 409: nothing shows that the station ever had these lines; an administrator's word is needed. */
  notVouched: "SV-195",
  /** 422: the question was stopped for its time. */
  tookTooLong: "SV-182",
  /** 413: too large; send in parts. */
  tooLarge: "SV-120",
  /** 409: this is not the next version of its pattern; the remedy ends with the one that is. */
  otherVersion: "SV-462",
} as const;

/** Codes of faults in a verdict that a device acts upon by itself. */
export const FAULT = {
  /** The line is dated ahead of the station's clock, or before its device joined: a device may put its time right. */
  clock: "SV-171",
} as const;

/**
 * `GET /api/log/live`: server-sent events. "chains" carries {@link LiveChains} as JSON: where the chain of every place
 * stands, at once and after each change; pull when it is not where yours stands. "heads" says the same in numbers alone,
 * for devices of before. "signed-out" ends the stream: ask `GET /api/session` why. A comment line comes every 20 s;
 * silence for a minute means a lost connection.
 */
export const LIVE_EVENTS = { heads: "heads", chains: "chains", signedOut: "signed-out" } as const;

/** What the live line tells: the life of the database, and the last number and chain hash by place. */
export interface LiveChains {
  readonly epoch: string;
  readonly heads: Readonly<Record<string, { readonly seq: number; readonly hash: string }>>;
}
