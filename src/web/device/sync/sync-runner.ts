import { isStoreError, PROBLEM, type HeldHeads, type PatternsReply, type PullPage, type PushReply } from "#station";
import type { Entry } from "#log";
import type { BranchMender } from "../branch/branch-mender.ts";
import { loadMender } from "../branch/load-mender.ts";
import { notePutBack } from "../branch/put-back-note.ts";
import type { DeviceStore, OutboxLine } from "../held/device-store.ts";
import { readHanded } from "../handed/index.ts";
import { heldOf, pullPages } from "./pull-pages.ts";
import { cutIntoParts, linesToSend, waitAfter } from "./push-parts.ts";
import { PhotoSender } from "./photo-sender.ts";
import { ONLINE, reachOf, type Reach } from "./reach.ts";
import type { Reply, ServerDoor } from "./server-door.ts";
import { FirstSync } from "../snapshot/first-sync.ts";

export interface SyncParts {
  readonly door: ServerDoor;
  readonly store: DeviceStore;
  /** Who is signed in here. */
  readonly who: { readonly person: string; readonly device: string };
  /** Something on this device's disk changed: lines came, or an outbox line's state did. */
  readonly onChange: () => Promise<void>;
  /** Patterns came that were not here before. */
  readonly onPatterns: () => Promise<void>;
  /** How far this device's clock is ahead of the server's [ms], as just measured. */
  readonly clockAhead: () => number | undefined;
  readonly onReach: (reach: Reach) => void;
  readonly now: () => string;
  /** Lines left this device's copy of the log, since the station does not have them: read everything anew. */
  readonly onPutBack: () => Promise<void>;
  /** The station's log does not add up, in words; undefined once it does. */
  readonly onFlaw: (flaw: string | undefined) => void;
}

/** What a part of an exchange came to: as of the station's reach, or that it does not have what is held here. */
type Step = Reach | { readonly kind: "apart"; readonly places: readonly string[] };

/** Note on the disk: which life of its database the station was last found in. */
export const EPOCH = "epoch";
/** How often an exchange begins again since the station was put back: while it is, copies may follow on each other. */
const PARTINGS = 3;
/** What the device's store says of a log that does not add up. */
const FLAWS: ReadonlySet<string> = new Set(["ST-143", "ST-144"]);

/** How long between looks when the server can be reached but its live line cannot [ms]. */
const LOOK_MS = 30_000;
/** How long an answer to the smallest question may take, the first time after a failure [ms]. */
const KNOCK_MS = 10_000;
/** How long a push may take: so long, and so much more for every line in it [ms]. One line must not hang for a minute. */
const PUSH_MS = 15_000;
const PUSH_LINE_MS = 100;

/** Sends what was written here and fetches what others wrote, again and again until stopped. One runs per device. */
export class SyncRunner {
  readonly #parts: SyncParts;
  #mender: BranchMender | undefined;
  readonly #photos: PhotoSender;
  readonly #first: FirstSync;
  readonly #stopped = new AbortController();
  #wake: () => void = () => undefined;
  #isWoken = false;
  #failures = 0;
  #hasPatterns = false;
  /** Which patterns the station had when they were fetched; undefined where it did not say. */
  #patternMark: string | undefined;

  constructor(parts: SyncParts) {
    this.#parts = parts;
    this.#photos = new PhotoSender(parts);
    this.#first = new FirstSync(parts);
  }

  get signal(): AbortSignal {
    return this.#stopped.signal;
  }

  /** Runs until stopped. A failure of the device's own disk ends it by throwing. */
  async run(): Promise<void> {
    while (!this.signal.aborted) {
      this.#isWoken = false;
      const reach = await this.once();
      this.#parts.onReach(reach);
      this.#failures = reach.kind === "online" ? 0 : this.#failures + 1;
      await this.#sleep(reach.kind === "online" ? LOOK_MS : waitAfter(this.#failures, Math.random()));
    }
  }

  /** Looks now rather than later: a line was written, the network is said to be back, the page is in sight again. */
  wake(): void {
    this.#isWoken = true;
    this.#wake();
  }

  stop(): void {
    this.#stopped.abort();
    this.#wake();
  }

  /**
   * One whole exchange: lines out, patterns and lines in, photos out. Ends at the first answer that is no. Where the
   * station is found not to have what is held here, that is set aside, and the exchange begins again by bringing it back.
   */
  async once(): Promise<Reach> {
    for (let tries = PARTINGS; ; tries--) {
      const step = await this.#exchange();
      if (step.kind === "offline") this.#photos.askAgain();
      if (step.kind !== "apart") return step;
      if (tries === 0) return { kind: "offline", because: "The station's log changes while it is compared." };
      const reach = await (await this.#mend()).part(step.places);
      await this.#notePutBack();
      await this.#parts.onPutBack();
      if (reach.kind !== "online") return reach;
    }
  }

  async #exchange(): Promise<Step> {
    const first = this.#failures > 0 ? [this.#knock] : [];
    const back = (await this.#parts.store.shelf.isOpen()) ? [this.#pull, this.#bringBack] : [];
    for (const act of [
      ...first,
      ...back,
      this.#push,
      this.#fetchPatterns,
      () => this.#first.fetchSnapshot(),
      this.#pull,
      this.#sendPhotos,
    ]) {
      const step = await act.call(this);
      if (step.kind !== "online") return step;
    }
    return ONLINE;
  }

  async #bringBack(): Promise<Step> {
    const reach = await (await this.#mend()).bringBack();
    await this.#parts.onChange();
    return reach;
  }

  /** After a failure something small is asked first: a dead network may let a large request hang for a minute. */
  async #knock(): Promise<Reach> {
    const reply = await this.#parts.door.ask({ method: "GET", path: "/api/health", patience: KNOCK_MS });
    return reply.kind === "unreachable" ? reachOf(reply) : ONLINE;
  }

  async #push(): Promise<Step> {
    const { store, who } = this.#parts;
    const outbox = await store.outbox();
    const handed = new Set((await readHanded(store)).map(({ entry }) => entry.id));
    for (const part of cutIntoParts(linesToSend(outbox, who, handed))) {
      const reach = await this.#pushPart(part);
      if (reach.kind !== "online") return reach;
    }
    return ONLINE;
  }

  async #pushPart(part: readonly Entry[]): Promise<Step> {
    const held = heldOf(await this.#parts.store.ends());
    const reply = await this.#parts.door.ask<PushReply>({
      method: "POST",
      path: "/api/log/push",
      json: { entries: part, held },
      patience: PUSH_MS + part.length * PUSH_LINE_MS,
    });
    if (reply.kind === "refused" && reply.problem.code === PROBLEM.tooLarge) return this.#pushHalves(part, reply);
    if (reply.kind !== "answered") return reachOf(reply);
    if (reply.value.apart !== undefined && reply.value.apart.length > 0) {
      return { kind: "apart", places: reply.value.apart };
    }
    await this.#noteVerdicts(part, reply.value);
    return ONLINE;
  }

  /** A part the server finds too large goes in halves; a single line that is too large is refused for good. */
  async #pushHalves(part: readonly Entry[], reply: Reply<PushReply> & { kind: "refused" }): Promise<Step> {
    if (part.length === 1) {
      await this.#parts.store.putOutbox([{ entry: part[0]!, state: "refused", faults: [tooLarge(reply)] }]);
      await this.#parts.onChange();
      return ONLINE;
    }
    const middle = part.length >> 1;
    const first = await this.#pushPart(part.slice(0, middle));
    return first.kind === "online" ? this.#pushPart(part.slice(middle)) : first;
  }

  async #noteVerdicts(part: readonly Entry[], { verdicts }: PushReply): Promise<void> {
    const aheadMs = this.#parts.clockAhead();
    const ahead = aheadMs === undefined ? {} : { aheadMs };
    const lines = part.map((entry, at): OutboxLine => {
      const verdict = verdicts[at];
      if (verdict === undefined) return { entry, state: "unsent" };
      if (verdict.verdict === "refused") return { entry, state: "refused", faults: verdict.faults, ...ahead };
      return { entry, state: "sent", ...(verdict.voucher !== undefined && { voucher: verdict.voucher }) };
    });
    await this.#parts.store.putOutbox(lines);
    await this.#parts.onChange();
  }

  /** What follows on what is held here, checked against it line by line. */
  async #pull(): Promise<Step> {
    const { door, store } = this.#parts;
    for await (const { reply, after } of pullPages(door, await store.ends())) {
      if (reply.kind !== "answered") return reachOf(reply);
      await this.#noteEpoch(reply.value.epoch);
      if (reply.value.apart.length > 0) return { kind: "apart", places: reply.value.apart };
      if (!(await this.#take(reply.value, after))) return ONLINE;
      const isFirstWhole = !reply.value.more && (await this.#first.noteWhole());
      if (reply.value.entries.length > 0 || isFirstWhole) await this.#parts.onChange();
      this.#notePatterns(reply.value.patterns);
    }
    const reach = await this.#fetchPatterns();
    return reach.kind === "online" ? this.#settle() : reach;
  }

  /** Others than when they were fetched: a version was issued since. */
  #notePatterns(mark: string | undefined): void {
    if (mark !== undefined && mark !== this.#patternMark) this.#hasPatterns = false;
  }

  /** False where the station's log does not add up: nothing of it is taken, and the person is told. */
  async #take({ entries, heads }: PullPage, after: HeldHeads): Promise<boolean> {
    try {
      const cursor = Object.fromEntries(Object.entries(after).map(([place, { seq }]) => [place, seq]));
      await this.#parts.store.takePulled(entries, cursor, heads);
      this.#parts.onFlaw(undefined);
      return true;
    } catch (cause) {
      if (!isStoreError(cause) || !FLAWS.has(cause.code)) throw cause;
      this.#parts.onFlaw(cause.message);
      return false;
    }
  }

  /** Another life of the station's database: what it said it has it may have no more. */
  async #noteEpoch(epoch: string): Promise<void> {
    const { store } = this.#parts;
    const before = await store.note<string>(EPOCH);
    if (before === epoch) return;
    await store.putNote(EPOCH, epoch);
    if (before === undefined) return;
    await this.#notePutBack();
    await this.#parts.onChange();
  }

  /** Photos may be lost without a line being lost: all are asked about again. */
  async #notePutBack(): Promise<void> {
    this.#photos.askAgain();
    await this.#first.dropSnapshot();
    await notePutBack(this.#parts.store, this.#parts.now());
  }

  async #mend(): Promise<BranchMender> {
    return (this.#mender ??= await loadMender(this.#parts));
  }

  async #settle(): Promise<Step> {
    const { store } = this.#parts;
    const isQuiet = !(await store.shelf.isOpen()) && !(await store.outbox()).some(({ state }) => state === "sent");
    if (isQuiet) return ONLINE;
    const outcome = await (await this.#mend()).settle();
    if (outcome === "to-send") this.wake();
    if (outcome !== "as-before") await this.#parts.onChange();
    return ONLINE;
  }

  async #fetchPatterns(): Promise<Reach> {
    if (this.#hasPatterns) return ONLINE;
    const reply = await this.#parts.door.ask<PatternsReply>({ method: "GET", path: "/api/patterns" });
    if (reply.kind !== "answered") return reachOf(reply);
    this.#hasPatterns = true;
    this.#patternMark = reply.value.mark;
    const before = await this.#parts.store.note("patterns");
    if (JSON.stringify(before) === JSON.stringify(reply.value.patterns)) return ONLINE;
    await this.#parts.store.putNote("patterns", reply.value.patterns);
    await this.#parts.onPatterns();
    return ONLINE;
  }

  #sendPhotos(): Promise<Reach> {
    return this.#photos.send();
  }

  async #sleep(ms: number): Promise<void> {
    if (this.#isWoken || this.signal.aborted) return;
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, ms);
      this.#wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
    this.#wake = () => undefined;
  }
}

function tooLarge(reply: Reply<unknown> & { kind: "refused" }) {
  const { code, message, remedy } = reply.problem;
  return { code, field: "entry", got: message, allowed: "a shorter line", remedy };
}
