import type { SnapshotReply } from "#station";
import type { DeviceStore } from "../held/device-store.ts";
import { ONLINE, reachOf, type Reach } from "../sync/reach.ts";
import type { ServerDoor } from "../sync/server-door.ts";
import { SNAPSHOT, type KeptSnapshot } from "./early-board.ts";

/** Note on the disk: the station's whole log has been here at least once. */
export const WHOLE = "whole";
/** How long the snapshot may take; without it the lines come as ever [ms]. */
const PATIENCE_MS = 60_000;

interface FirstSyncParts {
  readonly door: Pick<ServerDoor, "ask">;
  readonly store: DeviceStore;
  /** A snapshot came that was not here. */
  readonly onChange: () => Promise<void>;
}

/** The first time that a device fetches the log: a board ahead of it, and that it is all here. */
export class FirstSync {
  readonly #parts: FirstSyncParts;
  #isAsked = false;
  #isWhole = false;

  constructor(parts: FirstSyncParts) {
    this.#parts = parts;
  }

  /** Asks the station, once, for what its lines come to, on a device that has not had them all yet. */
  async fetchSnapshot(): Promise<Reach> {
    const { door, store, onChange } = this.#parts;
    if (this.#isAsked || (await this.#isPast())) return ONLINE;
    const path = "/api/log/snapshot";
    const reply = await door.ask<SnapshotReply>({ method: "GET", path, patience: PATIENCE_MS });
    if (reply.kind === "unreachable") return reachOf(reply);
    this.#isAsked = true;
    // A station that has none, or is of a version that knows none, is no obstacle: its lines are what counts.
    if (reply.kind !== "answered" || reply.value.kind !== "snapshot") return ONLINE;
    const { lines, snapshot } = reply.value;
    await store.putNote(SNAPSHOT, { lines, text: JSON.stringify(snapshot) } satisfies KeptSnapshot);
    await onChange();
    return ONLINE;
  }

  /** The station was put back: what it said its lines come to may be of lines that it has no more. */
  async dropSnapshot(): Promise<void> {
    this.#isAsked = false;
    await this.#parts.store.putNote(SNAPSHOT, undefined);
  }

  /** Notes that the whole log has been here once; true where that is new. Half a log tells half-truths. */
  async noteWhole(): Promise<boolean> {
    if (await this.#isLogWhole()) return false;
    await this.#parts.store.putNote(WHOLE, true);
    return (this.#isWhole = true);
  }

  async #isPast(): Promise<boolean> {
    return (await this.#isLogWhole()) || (await this.#parts.store.note(SNAPSHOT)) !== undefined;
  }

  async #isLogWhole(): Promise<boolean> {
    return (this.#isWhole ||= (await this.#parts.store.note<boolean>(WHOLE)) === true);
  }
}
