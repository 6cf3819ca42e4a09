import type { Entry } from "#log";
import type { SessionReply, SignedIn, SignedOut } from "#station";
import { preferences } from "../theme/index.ts";
import { alarmsOf } from "./alarms.ts";
import { clockAhead, deviceAmbient } from "./clock.ts";
import type { Draft, Recorder } from "./contract.ts";
import { sendStateOf, type Alarm, type DeviceState, type SignInOutcome, type Sitting } from "./device-state.ts";
import type { DeviceStore, OutboxLine } from "./device-store.ts";
import { askToKeep, findEmptied, forgetPeople, markUsed } from "./disk-watch.ts";
import { heldFile, heldFileName, saveFile } from "./held-file.ts";
import { HeldLog } from "./held-log.ts";
import { PhotoShelf } from "./photo-shelf.ts";
import { ServerDoor, type Reply } from "./server-door.ts";
import { outcomeOf, SittingDesk, sittingOf } from "./sitting-desk.ts";
import type { Reach } from "./sync-runner.ts";
import { SyncWatch } from "./sync-watch.ts";
import { TabTalk, type TabNews } from "./tab-talk.ts";

const MINUTE_MS = 60_000;

/** What the device remembers between openings, beside the log. */
const NOTES = { device: "device", sitting: "sitting", place: "place" } as const;

/**
 * This device: its disk, who sits at it, and its talk with the server. One per window. Its state is replaced whole on
 * each change, and whoever draws it is told.
 */
export class ThisDevice {
  readonly door: ServerDoor;
  readonly desk: SittingDesk;
  readonly recorder: Recorder;
  readonly #store: DeviceStore;
  readonly #log: HeldLog;
  readonly #talk = new TabTalk();
  readonly #hearers = new Set<() => void>();
  #state: DeviceState = { kind: "opening" };
  #device = "";
  #place: string | undefined;
  #sitting: Sitting | undefined;
  #sync: SyncWatch | undefined;
  #reach: Reach = { kind: "unknown" };
  #aheadMs: number | undefined;
  #diskAlarms: readonly Alarm[] = [];
  #server: SignedOut | undefined;

  constructor(store: DeviceStore) {
    this.#store = store;
    this.door = new ServerDoor(fetch.bind(globalThis), (...times) => this.#hearClock(clockAhead(...times)));
    this.desk = new SittingDesk(this.door);
    this.#log = new HeldLog(store, deviceAmbient);
    this.recorder = this.#makeRecorder(new PhotoShelf(store, this.door, deviceAmbient));
  }

  readonly now = (): DeviceState => this.#state;

  readonly hear = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** Id of this device; made once. */
  get id(): string {
    return this.#device;
  }

  /** Reads the disk and goes on where the device was left, with or without a network. */
  async open(): Promise<void> {
    const emptied = await findEmptied(this.#store, localStorage);
    this.#diskAlarms = emptied ? [emptied] : [];
    this.#device = (await this.#store.note<string>(NOTES.device)) ?? (await this.#newDevice());
    this.#place = await this.#store.note<string>(NOTES.place);
    this.#sitting = await this.#store.note<Sitting>(NOTES.sitting);
    this.#talk.hear((news) => void this.#hearTab(news));
    preferences.hear(() => this.#tell());
    setInterval(() => this.#tell(), MINUTE_MS);
    addEventListener("online", () => void this.#askAgain());
    await this.#log.load();
    if (this.#sitting) this.#sitDown();
    else await this.#askWho();
    this.#tell();
  }

  /** Takes the answer to a sign-in, set-up or invite; keeps who sits here and begins to fetch and send. */
  async takeSeat(asked: Promise<Reply<SignedIn>>): Promise<SignInOutcome> {
    const reply = await asked;
    if (reply.kind === "answered") await this.#seat(reply.value);
    return outcomeOf(reply);
  }

  /** Another person will use this device: nothing is removed, nothing more is written in this one's name. */
  async handOver(): Promise<void> {
    await this.#leave();
    await this.#askWho();
    if (!this.#sitting) preferences.seat(undefined);
    this.#tell();
  }

  /** Signs out and removes everything this device holds. What was not sent is gone: ask first. */
  async signOutAndErase(): Promise<void> {
    await this.#leave();
    await this.#store.erase();
    forgetPeople(localStorage);
    location.assign("/sign-in");
  }

  /** Looks at the server now. */
  sendNow(): void {
    this.#sync?.wake();
  }

  /** Puts right the times of lines refused for the clock and sends them again. */
  async correctClock(lines: readonly OutboxLine[], aheadMs: number): Promise<void> {
    await this.#log.correct(lines, aheadMs);
    this.#replaced();
  }

  async retry(lines: readonly OutboxLine[]): Promise<void> {
    await this.#log.retry(lines);
    this.#replaced();
  }

  async discard(line: OutboxLine): Promise<void> {
    await this.#log.discard(line);
    this.#replaced();
  }

  /** Saves everything held here to a file. */
  async exportHeld(): Promise<void> {
    saveFile(await heldFile(this.#store), heldFileName(deviceAmbient.now()));
  }

  /** Works at this place from now on. */
  async workAt(place: string): Promise<void> {
    this.#place = place;
    await this.#store.putNote(NOTES.place, place);
    this.#tell();
  }

  #makeRecorder(shelf: PhotoShelf): Recorder {
    return {
      record: (draft) => this.#record(draft),
      strike: ({ id, subject, place }, reason) =>
        this.#record({ subject, place, kind: "struck", body: { entry: id, reason } }),
      keepPhoto: async (file) => {
        const ref = await shelf.keep(file);
        await this.#changed();
        this.#sync?.wake();
        return ref;
      },
      photoUrl: (hash) => shelf.url(hash),
    };
  }

  async #record(draft: Draft): Promise<Entry> {
    if (!this.#sitting) throw new Error("Broken invariant: a line written while nobody is signed in");
    const entry = await this.#log.write(draft, { person: this.#sitting.person.id, device: this.#device });
    this.#tell();
    this.#talk.tell({ kind: "log-changed" });
    this.#sync?.wake();
    return entry;
  }

  async #newDevice(): Promise<string> {
    const id = deviceAmbient.newId();
    await this.#store.putNote(NOTES.device, id);
    return id;
  }

  /** Nobody is known to sit here: the server may still know, if only the disk was emptied. */
  async #askWho(): Promise<void> {
    const reply: Reply<SessionReply> = await this.desk.whoAmI();
    if (reply.kind === "answered" && reply.value.kind === "signed-in") await this.#seat(reply.value);
    else this.#server = reply.kind === "answered" ? (reply.value as SignedOut) : undefined;
    this.#reach = reply.kind === "unreachable" ? { kind: "offline", because: reply.because } : { kind: "online" };
  }

  /** A network came up while nobody was signed in: now the server can say whose station it is. */
  async #askAgain(): Promise<void> {
    if (this.#sitting) return;
    await this.#askWho();
    this.#tell();
  }

  async #seat(signedIn: SignedIn): Promise<void> {
    this.#sync?.stop();
    this.#sitting = sittingOf(signedIn);
    this.#device = signedIn.device;
    this.#reach = { kind: "online" };
    await this.#store.putNote(NOTES.device, this.#device);
    await this.#store.putNote(NOTES.sitting, this.#sitting);
    await markUsed(this.#store, localStorage, deviceAmbient.now());
    const unkept = await askToKeep();
    if (unkept) this.#diskAlarms = [...this.#diskAlarms.filter(({ kind }) => kind !== "not-kept"), unkept];
    this.#talk.tell({ kind: "session-changed" });
    this.#sitDown();
    this.#tell();
  }

  #sitDown(): void {
    preferences.seat(this.#sitting!.person.id);
    const who = { person: this.#sitting!.person.id, device: this.#device };
    this.#sync = new SyncWatch(
      {
        door: this.door,
        store: this.#store,
        who,
        onChange: () => this.#changed(),
        onPatterns: async () => {
          await this.#log.load();
          this.#replaced();
        },
        clockAhead: () => this.#aheadMs,
        onReach: (reach) => this.#reached(reach),
      },
      this.#talk,
    );
    this.#sync.start().catch((cause: unknown) => this.#fail(cause));
  }

  async #leave(): Promise<void> {
    this.#sync?.stop();
    this.#sitting = undefined;
    await this.#store.putNote(NOTES.sitting, undefined);
    await this.desk.signOut();
    this.#talk.tell({ kind: "session-changed" });
  }

  /** The disk has something new: read on, tell this window and the others. */
  async #changed(): Promise<void> {
    await this.#log.refresh();
    this.#tell();
    this.#talk.tell({ kind: "log-changed" });
  }

  #replaced(): void {
    this.#tell();
    this.#talk.tell({ kind: "log-replaced" });
    this.#sync?.wake();
  }

  #reached(reach: Reach): void {
    this.#reach = reach;
    this.#tell();
  }

  async #hearTab(news: TabNews): Promise<void> {
    if (news.kind === "session-changed") location.reload();
    else if (news.kind === "reach") this.#reached(news.reach);
    else if (news.kind !== "wake-sync") {
      await (news.kind === "log-replaced" ? this.#log.load() : this.#log.refresh());
      this.#tell();
    }
  }

  #fail(cause: unknown): void {
    this.#state = { kind: "unopened", error: cause };
    for (const hearer of this.#hearers) hearer();
  }

  #tell(): void {
    this.#state = this.#sitting ? this.#signedIn(this.#sitting) : this.#signedOut();
    for (const hearer of this.#hearers) hearer();
  }

  #signedOut(): DeviceState {
    return {
      kind: "signed-out",
      alarms: this.#alarms(),
      ...(this.#server && { server: this.#server }),
      isOffline: this.#reach.kind === "offline",
      waiting: this.#log.outbox.filter(({ state }) => state === "unsent").length,
    };
  }

  #signedIn(sitting: Sitting): DeviceState {
    const station = this.#log.view({
      person: { ...sitting.person, left: false },
      device: this.#device,
      place: this.#place,
      now: deviceAmbient.now(),
      units: preferences.now().units,
    });
    return {
      kind: "signed-in",
      sitting,
      ...(station && { station }),
      sendState: sendStateOf(this.#log.outbox, this.#log.unsentPhotos, this.#reach),
      outbox: this.#log.outbox.filter(({ state }) => state !== "sent"),
      reach: this.#reach,
      alarms: this.#alarms(),
    };
  }

  /** Told at once when the clock goes wrong or is put right: nobody should read the one while the other is true. */
  #hearClock(aheadMs: number): void {
    const before = this.#alarms().length;
    this.#aheadMs = aheadMs;
    if (this.#state.kind === "signed-in" && this.#alarms().length !== before) this.#tell();
  }

  #alarms(): readonly Alarm[] {
    return alarmsOf(this.#diskAlarms, this.#aheadMs);
  }
}
