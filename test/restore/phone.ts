import { createStationFold } from "#station";
import { openBrowserStore, type BrowserStore } from "#store/browser";
import type { Entry } from "#log";
import type { EntryKind } from "#readiness";
import type { Draft, SendState } from "../../src/web/device/sync/contract.ts";
import { sendStateOf } from "../../src/web/device/device-state.ts";
import { HeldLog } from "../../src/web/device/held/held-log.ts";
import { ServerDoor } from "../../src/web/device/sync/server-door.ts";
import type { Reach } from "../../src/web/device/sync/reach.ts";
import { SyncRunner } from "../../src/web/device/sync/sync-runner.ts";
import { patterns, type Member, type PutBackStation } from "./put-back-station.ts";

let opened = 0;

/** A device as the app runs it, less the screen. */
export class Phone {
  readonly member: Member;
  readonly store: BrowserStore;
  readonly log: HeldLog;
  readonly #runner: SyncRunner;
  /** What the device says of the station's log, where it does not add up. */
  flaw: string | undefined;

  private constructor(
    station: PutBackStation,
    member: Member,
    store: BrowserStore,
    log: HeldLog,
    fetchIt: typeof fetch,
  ) {
    this.member = member;
    this.store = store;
    this.log = log;
    this.#runner = new SyncRunner({
      door: new ServerDoor(fetchIt),
      store,
      who: { person: member.me.person.id, device: member.me.device },
      onChange: () => log.refresh(),
      onPatterns: () => log.load(),
      clockAhead: () => undefined,
      onReach: () => undefined,
      now: station.ambient.now,
      onPutBack: () => log.load(),
      onFlaw: (flaw) => (this.flaw = flaw),
    });
  }

  /** @param fetchIt - the network between, where not simply the station's */
  static async open(station: PutBackStation, member: Member, fetchIt = member.fetch): Promise<Phone> {
    const store = await openBrowserStore(`put-back-${(opened += 1)}`);
    const log = new HeldLog(store, station.ambient);
    await log.load();
    return new Phone(station, member, store, log, fetchIt);
  }

  write<K extends EntryKind>(draft: Draft<K>): Promise<Entry> {
    return this.log.write(draft, { person: this.member.me.person.id, device: this.member.me.device });
  }

  sync(): Promise<Reach> {
    return this.#runner.once();
  }

  get sendState(): SendState {
    return sendStateOf(this.log.outbox, this.log.unsentPhotos, { kind: "online" }, this.log.lost);
  }

  /** Everything that counts on this device. */
  async entries(): Promise<readonly Entry[]> {
    const lines = [...(await this.store.kept({})), ...(await this.store.outbox()), ...(await this.store.shelf.lost())];
    return lines.map(({ entry }) => entry);
  }

  async close(): Promise<void> {
    await this.store.close();
  }
}

/** What these lines say, however they came. */
export function readingOf(entries: Iterable<Entry>) {
  const fold = createStationFold(patterns);
  fold.add(entries);
  return fold.read();
}
