import type { Problem, SignedIn, SignedOut, StationClockOff } from "#station";
import type { SendState, StationView } from "./sync/contract.ts";
import type { PutBack } from "./branch/put-back-note.ts";
import type { LostLine, OutboxLine, Progress, UnsentPhoto } from "./held/device-store.ts";
import type { HandedLine } from "./handed/index.ts";
import type { Reach } from "./sync/reach.ts";
import type { Doubt } from "./witness/witness-note.ts";

/** Who is signed in on this device; kept on its disk, so that it holds without a network. */
export interface Sitting {
  readonly person: SignedIn["person"];
  readonly device: string;
  readonly deviceName: string;
  readonly stationName: string;
  readonly passkeys: number;
  readonly demo: boolean;
}

/** Something this device's person should know before trusting what it shows. */
export type Alarm =
  /** The disk was emptied since last time: by the browser, by a cleaner, by somebody. */
  | { readonly kind: "emptied"; readonly lastUsed: string }
  /** The browser would not promise to keep the data. */
  | { readonly kind: "not-kept" }
  /** The clock is off by so much [ms], ahead where positive. */
  | { readonly kind: "clock"; readonly aheadMs: number }
  /** The station's own clock is off, by its own word. */
  | { readonly kind: "station-clock"; readonly off: StationClockOff }
  /** The station's log does not go on from what it had signed before this device. */
  | { readonly kind: "other-history"; readonly doubts: readonly Doubt[] }
  /** The station was put back to an earlier copy; how many lines it lacked, and of them lacks still. */
  | { readonly kind: "put-back"; readonly found: PutBack; readonly waiting: number }
  /** What the station said at first its lines come to is not what they say; when that was found, RFC 3339. */
  | { readonly kind: "false-snapshot"; readonly found: string }
  /** What the station gave does not follow on what is held here, in words. */
  | { readonly kind: "flaw"; readonly flaw: string };

export type DeviceState =
  | { readonly kind: "opening" }
  /** The disk of this device failed. */
  | { readonly kind: "unopened"; readonly error: unknown }
  /** Nothing here can be read before somebody opens it. */
  | {
      readonly kind: "locked";
      /** A passkey can open it. */
      readonly hasPasskey: boolean;
      /** Lines were written here while it was locked. */
      readonly hasBeside: boolean;
    }
  | {
      readonly kind: "signed-out";
      readonly alarms: readonly Alarm[];
      /** What the server says of this device; absent until it was reached. */
      readonly server?: SignedOut;
      readonly isOffline: boolean;
      /** Lines of others still waiting here. */
      readonly waiting: number;
    }
  | {
      readonly kind: "signed-in";
      readonly sitting: Sitting;
      /** A casualty sheet on a locked device: nothing of the station's is here. */
      readonly isBeside?: true;
      /** How the lock of this device stands. */
      readonly lock: "off" | "open" | "locked";
      /** How far it is with turning it on or off, while it is. */
      readonly lockProgress?: Progress;
      /** Absent while the first copy of the log is being fetched. */
      readonly station?: StationView;
      readonly sendState: SendState;
      readonly outbox: readonly OutboxLine[];
      /** Lines that the station had and has no more, and this device holds. */
      readonly lost: readonly LostLine[];
      /** Lines of other devices that were handed over here and the station is not known to have. */
      readonly handed: readonly HandedLine[];
      readonly reach: Reach;
      readonly alarms: readonly Alarm[];
    };

/** What signing in, setting up or taking an invite ended in. */
export type SignInOutcome =
  | { readonly kind: "signed-in" }
  | { readonly kind: "refused"; readonly problem: Problem }
  | { readonly kind: "offline" };

/** What is not with the station. Refused lines come first: they will not go by themselves. */
export function sendStateOf(
  outbox: readonly OutboxLine[],
  photos: readonly UnsentPhoto[],
  reach: Reach,
  lost: readonly LostLine[] = [],
): SendState {
  const refused = outbox.filter(({ state }) => state === "refused").length;
  if (refused > 0) return { kind: "refused", lines: refused };
  const lines = [...outbox.filter(({ state }) => state === "unsent"), ...lost].map(({ entry }) => entry.at);
  const since = earliest([...lines, ...photos.map((photo) => photo.since)]);
  if (since === undefined) return { kind: "sent" };
  return { kind: "waiting", lines: lines.length, photos: photos.length, since, offline: reach.kind !== "online" };
}

function earliest(instants: readonly string[]): string | undefined {
  return [...instants].sort((one, other) => Date.parse(one) - Date.parse(other))[0];
}
