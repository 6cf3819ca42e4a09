import type { SignedOut } from "#station";
import type { StationView } from "./sync/contract.ts";
import { sendStateOf, type Alarm, type DeviceState, type Sitting } from "./device-state.ts";
import type { HeldLog } from "./held/held-log.ts";
import type { DeviceLock } from "./lock/device-lock.ts";
import type { Reach } from "./sync/reach.ts";

/** All that is told of a device, as it stands now. */
interface DeviceFacts {
  /** Nobody has opened its lock yet. */
  readonly isShut: boolean;
  /** It is locked, and only a casualty sheet is written beside the lock. */
  readonly isBeside: boolean;
  readonly lock: Pick<DeviceLock, "kind" | "openers" | "hasBeside" | "progress">;
  readonly log: Pick<HeldLog, "outbox" | "unsentPhotos" | "lost" | "handed" | "waiting">;
  readonly reach: Reach;
  readonly alarms: readonly Alarm[];
  readonly sitting: Sitting | undefined;
  /** What the server said to somebody who is not signed in. */
  readonly server: SignedOut | undefined;
  /** As who sits here sees it; nothing while it is read. */
  readonly station: StationView | undefined;
}

/** What a device tells whoever draws it. */
export function deviceStateOf(facts: DeviceFacts): DeviceState {
  const { isShut, lock, sitting } = facts;
  if (isShut) return { kind: "locked", hasPasskey: lock.openers.passkeys > 0, hasBeside: lock.hasBeside };
  return sitting ? signedIn(facts, sitting) : signedOut(facts);
}

function signedOut({ reach, server, alarms, log }: DeviceFacts): DeviceState {
  const isOffline = reach.kind === "offline";
  return { kind: "signed-out", alarms, ...(server && { server }), isOffline, waiting: log.waiting };
}

function signedIn({ isBeside, lock, log, reach, alarms, station }: DeviceFacts, sitting: Sitting): DeviceState {
  return {
    kind: "signed-in",
    sitting,
    lock: lock.kind,
    ...(lock.progress && { lockProgress: lock.progress }),
    ...(isBeside && { isBeside: true as const }),
    ...(station && { station }),
    sendState: sendStateOf(log.outbox, log.unsentPhotos, reach, log.lost),
    lost: log.lost,
    handed: log.handed,
    outbox: log.outbox.filter(({ state }) => state !== "sent"),
    reach,
    alarms,
  };
}
