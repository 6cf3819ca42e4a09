import type { SessionReply, SignedIn, SignedOut } from "#station";
import { preferences } from "../theme/index.ts";
import { Watched } from "../watched/index.ts";
import { alarmsOf, logAlarms } from "./alarms.ts";
import type { MenderParts } from "./branch/branch-mender.ts";
import { clockAhead, deviceAmbient } from "./clock.ts";
import { ClockWatch, refusedForClock } from "./clock-watch.ts";
import type { Recorder, StationView } from "./sync/contract.ts";
import type { Alarm, DeviceState, SignInOutcome, Sitting } from "./device-state.ts";
import { deviceStateOf } from "./device-telling.ts";
import { deviceIdOf, NOTES } from "./held/device-notes.ts";
import type { DeviceStore } from "./held/device-store.ts";
import { askToKeep, findEmptied, forgetPeople, markUsed } from "./held/disk-watch.ts";
import { HeldDesk } from "./held/held-desk.ts";
import { HeldLog } from "./held/held-log.ts";
import { lineRecorder } from "./held/line-recorder.ts";
import { PlantDrawer } from "./held/plant-drawer.ts";
import { groundBeside, keepCard, sittingBeside, type BesideCard } from "./lock/beside.ts";
import { DeviceLock, type Renewal } from "./lock/device-lock.ts";
import { PhotoShelf } from "./held/photo-shelf.ts";
import { ServerDoor, type Reply } from "./sync/server-door.ts";
import { outcomeOf, SittingDesk, sittingOf } from "./sync/sitting-desk.ts";
import type { Reach } from "./sync/reach.ts";
import { SyncWatch } from "./sync/sync-watch.ts";
import { TabTalk, type TabNews } from "./sync/tab-talk.ts";
import { WitnessDesk } from "./witness/witness-desk.ts";

const MINUTE_MS = 60_000;

/** News that the lock hears for itself. */
const LOCK_NEWS: ReadonlySet<TabNews["kind"]> = new Set(["key", "key-wanted", "lock-now"]);

/**
 * This device: its disk, who sits at it, and its talk with the server. One per window. Its state is replaced whole on
 * each change, and whoever draws it is told.
 */
export class ThisDevice {
  readonly door: ServerDoor;
  readonly desk: SittingDesk;
  readonly recorder: Recorder;
  readonly witness: WitnessDesk;
  readonly lock: DeviceLock;
  readonly held: HeldDesk;
  /** What was planted for a drill on this device. */
  readonly plants: PlantDrawer;
  readonly #beside: BesideCard | undefined;
  readonly #store: DeviceStore;
  readonly #log: HeldLog;
  readonly #talk = new TabTalk();
  readonly #state = new Watched<DeviceState>({ kind: "opening" });
  #device = "";
  #place: string | undefined;
  #sitting: Sitting | undefined;
  #sync: SyncWatch | undefined;
  #reach: Reach = { kind: "unknown" };
  readonly #clocks = new ClockWatch(() => {
    this.held.retry(refusedForClock(this.#log.outbox)).catch((cause: unknown) => this.#fail(cause));
  });
  #diskAlarms: readonly Alarm[] = [];
  #server: SignedOut | undefined;
  #flaw: string | undefined;
  #renewal: Renewal | undefined;
  /** Until somebody has opened the lock, and what is behind it was read. */
  #isShut = false;

  /** @param beside - where the device is locked, and only a casualty sheet is written beside the lock */
  constructor(store: DeviceStore, beside?: BesideCard) {
    this.#store = store;
    this.plants = new PlantDrawer(store);
    this.#beside = beside;
    const [tell, fail] = [() => this.#tell(), (cause: unknown) => this.#fail(cause)];
    this.door = new ServerDoor(
      fetch.bind(globalThis),
      (...times) => this.#hearClock(() => this.#clocks.hear(clockAhead(...times))),
      (off) => this.#hearClock(() => this.#clocks.hearStation(off)),
    );
    this.desk = new SittingDesk(this.door);
    this.#log = new HeldLog(store, deviceAmbient, beside && groundBeside(beside));
    this.lock = new DeviceLock({
      store,
      desk: this.desk,
      talk: this.#talk,
      begin: (renewal) => this.#begin(renewal),
      takeSeat: (asked) => this.takeSeat(asked),
      sitting: () => this.#sitting,
      tell,
    });
    this.witness = new WitnessDesk({ door: this.door, store, now: deviceAmbient.now, tell, fail });
    this.held = new HeldDesk({
      store,
      log: this.#log,
      ends: () => this.#ends(),
      onNew: () => this.#changed(),
      onTaken: () => this.#taken(),
      onReplaced: () => this.#replaced(),
      tell,
      wake: () => this.#sync?.wake(),
    });
    this.recorder = lineRecorder({
      log: this.#log,
      shelf: new PhotoShelf(store, this.door, deviceAmbient),
      who: () => ({ sitting: this.#sitting, device: this.#device }),
      station: () => this.#sitting && this.#view(this.#sitting),
      onLine: () => this.#written(),
      onPhoto: () => this.#changed().then(() => this.#sync?.wake()),
    });
  }

  readonly now = this.#state.read;

  readonly hear = this.#state.hear;

  /** Id of this device; made once. */
  get id(): string {
    return this.#device;
  }

  /** Reads the disk and goes on where the device was left, with or without a network. */
  async open(): Promise<void> {
    const emptied = this.#beside ? undefined : await findEmptied(this.#store, localStorage);
    this.#diskAlarms = emptied ? [emptied] : [];
    this.#device = await deviceIdOf(this.#store);
    preferences.hear(() => this.#tell());
    setInterval(() => this.#tell(), MINUTE_MS);
    if (this.#beside) return this.#sitBeside(this.#beside);
    this.#talk.hear((news) => void this.#hearTab(news));
    addEventListener("online", () => void this.#askAgain());
    this.#isShut = await this.lock.isShut();
    if (!this.#isShut) return this.#begin();
    this.#tell();
    // Whoever finds the phone finds the session ended too; whoever opens the lock signs in by that.
    await this.desk.signOut();
  }

  /** Goes on where the device was left, once it is open. */
  async #begin(renewal?: Renewal): Promise<void> {
    await this.lock.settle();
    this.#place = await this.#store.note<string>(NOTES.place);
    this.#sitting = await this.#store.note<Sitting>(NOTES.sitting);
    await this.#log.load();
    await this.witness.open();
    this.#isShut = false;
    if (this.#sitting) await this.#goOn(this.#sitting, renewal);
    else await this.#askWho();
    this.#tell();
    this.lock.finish().catch((cause: unknown) => this.#fail(cause));
  }

  async #goOn({ person }: Sitting, renewal?: Renewal): Promise<void> {
    preferences.seat(person.id);
    this.#tell();
    await this.#keepCard();
    const outcome = renewal && (await this.takeSeat(renewal()));
    if (outcome?.kind === "signed-in") return;
    if (outcome?.kind === "offline") this.#renewal = renewal;
    this.#sitDown();
  }

  /** A casualty sheet on a locked device: nothing is fetched and nothing sent. */
  async #sitBeside(card: BesideCard): Promise<void> {
    this.#device = card.device;
    this.#place = card.place;
    this.#sitting = sittingBeside(card);
    this.#reach = { kind: "offline", because: "This device is locked." };
    await this.#log.load();
    this.#tell();
  }

  /** What a casualty sheet needs to know where the device is locked. */
  async #keepCard(): Promise<void> {
    if (this.lock.kind !== "open" || !this.#sitting) return;
    const { device, deviceName, person } = this.#sitting;
    const view = this.#view(this.#sitting);
    const place = view?.place;
    await this.lock.forgetLeavers(view?.people ?? []);
    if (place)
      await keepCard(this.#store, { device, deviceName, person: person.id, place: place.id, zone: place.zone });
  }

  /** Turns the lock on, and keeps what a casualty sheet needs to know under it. */
  async turnLockOn(pin: string): Promise<SignInOutcome> {
    const outcome = await this.lock.turnOn(pin);
    await this.#keepCard();
    return outcome;
  }

  /** Takes the answer to a sign-in, set-up or invite, with the PIN where it was by one; keeps who sits here and begins to fetch and send. */
  async takeSeat(asked: Promise<Reply<SignedIn>>, pin?: string): Promise<SignInOutcome> {
    const reply = await asked;
    if (reply.kind === "answered") await this.#seat(reply.value);
    if (reply.kind === "answered" && pin !== undefined) await this.lock.keepPin(pin);
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

  /** Works at this place from now on. */
  async workAt(place: string): Promise<void> {
    this.#place = place;
    await this.#store.putNote(NOTES.place, place);
    await this.#keepCard();
    this.#tell();
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
    if (this.lock.kind === "locked") await this.desk.signOut();
    if (this.#sitting || this.lock.kind === "locked") return;
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
    this.#sync = new SyncWatch(
      {
        ...this.#ends(),
        onChange: () => this.#changed(),
        onPatterns: () => this.#readAnew(),
        clockAhead: () => this.#clocks.known.aheadMs,
        onReach: (reach) => this.#exchanged(reach),
        onPutBack: () => this.#readAnew(),
        onFlaw: (flaw) => this.#hearFlaw(flaw),
      },
      this.#talk,
    );
    this.#sync.start().catch((cause: unknown) => this.#fail(cause));
  }

  #ends(): MenderParts {
    const who = { person: this.#sitting?.person.id ?? "", device: this.#device };
    return { door: this.door, store: this.#store, who, now: deviceAmbient.now };
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
    this.#taken();
  }

  #taken(): void {
    this.#tell();
    this.#talk.tell({ kind: "log-changed" });
  }

  /** Something was written here: the others are told, and it is sent. */
  #written(): void {
    this.#taken();
    this.#sync?.wake();
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

  #exchanged(reach: Reach): void {
    this.#reached(reach);
    const renewal = reach.kind === "signed-out" ? this.#renewal : undefined;
    if (renewal) {
      this.#renewal = undefined;
      void this.takeSeat(renewal());
    }
    const isMending = this.#log.lost.some(({ why }) => why === "offered");
    if (reach.kind === "online") this.witness.exchanged(isMending).catch((cause: unknown) => this.#fail(cause));
  }

  async #readAnew(): Promise<void> {
    await this.#log.load();
    this.#replaced();
  }

  #hearFlaw(flaw: string | undefined): void {
    if (flaw === this.#flaw) return;
    this.#flaw = flaw;
    this.#tell();
  }

  async #hearTab(news: TabNews): Promise<void> {
    if (news.kind === "session-changed") location.reload();
    else if (this.lock.kind === "locked" || LOCK_NEWS.has(news.kind)) return;
    else if (news.kind === "reach") this.#reached(news.reach);
    else if (news.kind !== "wake-sync") {
      await (news.kind === "log-replaced" ? this.#log.load() : this.#log.refresh());
      this.#tell();
    }
  }

  #fail(cause: unknown): void {
    this.#state.set({ kind: "unopened", error: cause });
  }

  #tell(): void {
    const station = this.#sitting && this.#view(this.#sitting);
    this.#state.set(
      deviceStateOf({
        isShut: this.#isShut,
        isBeside: this.#beside !== undefined,
        lock: this.lock,
        log: this.#log,
        reach: this.#reach,
        alarms: this.#alarms(),
        sitting: this.#sitting,
        server: this.#server,
        station,
      }),
    );
  }

  #view(sitting: Sitting): StationView | undefined {
    return this.#log.view({
      person: { ...sitting.person, left: false },
      device: this.#device,
      place: this.#place,
      now: deviceAmbient.now(),
      units: preferences.now().units,
    });
  }

  /** Told at once when the clock goes wrong or is put right: nobody should read the one while the other is true. */
  #hearClock(hear: () => void): void {
    const kinds = () => this.#alarms().map(({ kind }) => kind);
    const before = kinds().join();
    hear();
    if (this.now().kind === "signed-in" && kinds().join() !== before) this.#tell();
  }

  #alarms(): readonly Alarm[] {
    const own = alarmsOf(this.#diskAlarms, this.#clocks.known);
    return [...this.witness.alarms(), ...own, ...logAlarms(this.#log, this.#flaw)];
  }
}
