import type { Problem, SignedIn, SignedOut } from "#station";
import type { SendState, StationView } from "./contract.ts";
import type { OutboxLine, UnsentPhoto } from "./device-store.ts";
import type { Reach } from "./sync-runner.ts";

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
  | { readonly kind: "clock"; readonly aheadMs: number };

export type DeviceState =
  | { readonly kind: "opening" }
  /** The disk of this device failed. */
  | { readonly kind: "unopened"; readonly error: unknown }
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
      /** Absent while the first copy of the log is being fetched. */
      readonly station?: StationView;
      readonly sendState: SendState;
      readonly outbox: readonly OutboxLine[];
      readonly reach: Reach;
      readonly alarms: readonly Alarm[];
    };

/** What signing in, setting up or taking an invite ended in. */
export type SignInOutcome =
  | { readonly kind: "signed-in" }
  | { readonly kind: "refused"; readonly problem: Problem }
  | { readonly kind: "offline" };

/** What is not yet sent. Refused lines come first: they will not go by themselves. */
export function sendStateOf(outbox: readonly OutboxLine[], photos: readonly UnsentPhoto[], reach: Reach): SendState {
  const refused = outbox.filter(({ state }) => state === "refused").length;
  if (refused > 0) return { kind: "refused", lines: refused };
  const lines = outbox.filter(({ state }) => state === "unsent").map(({ entry }) => entry.at);
  const since = earliest([...lines, ...photos.map((photo) => photo.since)]);
  if (since === undefined) return { kind: "sent" };
  return { kind: "waiting", lines: lines.length, photos: photos.length, since, offline: reach.kind !== "online" };
}

function earliest(instants: readonly string[]): string | undefined {
  return [...instants].sort((one, other) => Date.parse(one) - Date.parse(other))[0];
}
