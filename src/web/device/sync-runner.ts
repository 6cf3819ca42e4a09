import {
  PROBLEM,
  type Cursor,
  type MissingPhotosReply,
  type PatternsReply,
  type PullReply,
  type PushReply,
} from "#station";
import type { Entry } from "#log";
import type { DeviceStore, OutboxLine } from "./device-store.ts";
import { cutIntoParts, linesToSend, waitAfter } from "./push-parts.ts";
import type { Reply, ServerDoor } from "./server-door.ts";

/** How it stands between this device and the server. */
export type Reach =
  | { readonly kind: "unknown" }
  | { readonly kind: "online" }
  | { readonly kind: "offline"; readonly because: string }
  /** The server no longer takes this device's word for who is using it; lines stay here. */
  | { readonly kind: "signed-out"; readonly code: string; readonly message: string; readonly remedy: string };

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
}

/** Note on the disk: the station's whole log has been here at least once. */
export const WHOLE = "whole";

/** How long between looks when the server can be reached but its live line cannot [ms]. */
const LOOK_MS = 30_000;
/** How long an answer to the smallest question may take, the first time after a failure [ms]. */
const KNOCK_MS = 10_000;
/** How long a push may take: so long, and so much more for every line in it [ms]. One line must not hang for a minute. */
const PUSH_MS = 15_000;
const PUSH_LINE_MS = 100;
const SIGNED_OUT_CODES: ReadonlySet<string> = new Set([PROBLEM.signedOut, PROBLEM.deviceShutOut, PROBLEM.personLeft]);

/** Sends what was written here and fetches what others wrote, again and again until stopped. One runs per device. */
export class SyncRunner {
  readonly #parts: SyncParts;
  readonly #stopped = new AbortController();
  #wake: () => void = () => undefined;
  #isWoken = false;
  #failures = 0;
  #hasPatterns = false;
  #isWhole = false;

  constructor(parts: SyncParts) {
    this.#parts = parts;
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

  /** One whole exchange: lines out, patterns and lines in, photos out. Ends at the first answer that is no. */
  async once(): Promise<Reach> {
    const first = this.#failures > 0 ? [this.#knock] : [];
    for (const step of [...first, this.#push, this.#fetchPatterns, this.#pull, this.#sendPhotos]) {
      const reach = await step.call(this);
      if (reach.kind !== "online") return reach;
    }
    return ONLINE;
  }

  /** After a failure something small is asked first: a dead network may let a large request hang for a minute. */
  async #knock(): Promise<Reach> {
    const reply = await this.#parts.door.ask({ method: "GET", path: "/api/health", patience: KNOCK_MS });
    return reply.kind === "unreachable" ? reachOf(reply) : ONLINE;
  }

  async #push(): Promise<Reach> {
    const { store, who } = this.#parts;
    const outbox = await store.outbox();
    for (const part of cutIntoParts(linesToSend(outbox, who))) {
      const reach = await this.#pushPart(part);
      if (reach.kind !== "online") return reach;
    }
    return ONLINE;
  }

  async #pushPart(part: readonly Entry[]): Promise<Reach> {
    const reply = await this.#parts.door.ask<PushReply>({
      method: "POST",
      path: "/api/log/push",
      json: { entries: part },
      patience: PUSH_MS + part.length * PUSH_LINE_MS,
    });
    if (reply.kind === "refused" && reply.problem.code === PROBLEM.tooLarge) return this.#pushHalves(part, reply);
    if (reply.kind !== "answered") return reachOf(reply);
    await this.#noteVerdicts(part, reply.value);
    return ONLINE;
  }

  /** A part the server finds too large goes in halves; a single line that is too large is refused for good. */
  async #pushHalves(part: readonly Entry[], reply: Reply<PushReply> & { kind: "refused" }): Promise<Reach> {
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
      return { entry, state: "sent" };
    });
    await this.#parts.store.putOutbox(lines);
    await this.#parts.onChange();
  }

  async #pull(): Promise<Reach> {
    for (;;) {
      const cursor: Cursor = await this.#parts.store.cursor();
      const path = `/api/log/pull?limit=2000&cursor=${encodeURIComponent(JSON.stringify(cursor))}`;
      const reply = await this.#parts.door.ask<PullReply>({ method: "GET", path, patience: 60_000 });
      if (reply.kind !== "answered") return reachOf(reply);
      await this.#parts.store.takePulled(reply.value.entries, reply.value.cursor);
      const isFirstWhole = !reply.value.more && (await this.#noteWhole());
      if (reply.value.entries.length > 0 || isFirstWhole) await this.#parts.onChange();
      if (!reply.value.more) return ONLINE;
    }
  }

  /** Notes that the whole log has been here once; true where that is new. Half a log tells half-truths. */
  async #noteWhole(): Promise<boolean> {
    if (this.#isWhole || (this.#isWhole = (await this.#parts.store.note<boolean>(WHOLE)) === true)) return false;
    await this.#parts.store.putNote(WHOLE, true);
    return (this.#isWhole = true);
  }

  async #fetchPatterns(): Promise<Reach> {
    if (this.#hasPatterns) return ONLINE;
    const reply = await this.#parts.door.ask<PatternsReply>({ method: "GET", path: "/api/patterns" });
    if (reply.kind !== "answered") return reachOf(reply);
    this.#hasPatterns = true;
    const before = await this.#parts.store.note("patterns");
    if (JSON.stringify(before) === JSON.stringify(reply.value.patterns)) return ONLINE;
    await this.#parts.store.putNote("patterns", reply.value.patterns);
    await this.#parts.onPatterns();
    return ONLINE;
  }

  async #sendPhotos(): Promise<Reach> {
    const hashes = (await this.#parts.store.unsentPhotos()).slice(0, 200).map(({ hash }) => hash);
    if (hashes.length === 0) return ONLINE;
    const reply = await this.#parts.door.ask<MissingPhotosReply>({
      method: "POST",
      path: "/api/photos/missing",
      json: { hashes },
    });
    if (reply.kind !== "answered") return reachOf(reply);
    const missing = new Set(reply.value.missing);
    for (const hash of hashes) {
      const outcome = missing.has(hash) ? await this.#sendPhoto(hash) : "held";
      if (typeof outcome === "object") return outcome;
      if (outcome === "held") await this.#parts.store.markPhotoSent(hash);
      await this.#parts.onChange();
    }
    return ONLINE;
  }

  /** A photo the server will not have stays here, and does not hold up the others. */
  async #sendPhoto(hash: string): Promise<"held" | "refused" | Reach> {
    const photo = await this.#parts.store.photo(hash);
    if (!photo) return "held";
    const bytes = { mime: photo.mime, content: photo.bytes };
    const reply = await this.#parts.door.ask({ method: "PUT", path: `/api/photos/${hash}`, bytes, patience: 120_000 });
    if (reply.kind === "answered") return "held";
    const reach = reachOf(reply);
    return reply.kind === "refused" && reach.kind !== "signed-out" ? "refused" : reach;
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

const ONLINE: Reach = { kind: "online" };

function reachOf(reply: Exclude<Reply<unknown>, { kind: "answered" }>): Reach {
  if (reply.kind === "unreachable") return { kind: "offline", because: reply.because };
  const { code, message, remedy } = reply.problem;
  if (SIGNED_OUT_CODES.has(code)) return { kind: "signed-out", code, message, remedy };
  return { kind: "offline", because: `${message} ${remedy}` };
}

function tooLarge(reply: Reply<unknown> & { kind: "refused" }) {
  const { code, message, remedy } = reply.problem;
  return { code, field: "entry", got: message, allowed: "a shorter line", remedy };
}
