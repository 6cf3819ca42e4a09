import { STATION_PLACE, type Entry } from "#log";
import {
  PROBLEM,
  PUSH_BYTES_LIMIT,
  PUSH_LIMIT,
  type BringBackReply,
  type BringBackRequest,
  type CommonReply,
  type Cursor,
} from "#station";
import type { Branch } from "#store/browser";
import type { DeviceStore, OutboxLine } from "../held/device-store.ts";
import { PART_BYTES, PART_LINES } from "../sync/push-parts.ts";
import { ONLINE, reachOf, type Reach } from "../sync/reach.ts";
import type { Reply, ServerDoor } from "../sync/server-door.ts";
import { notePutBack } from "./put-back-note.ts";

export interface MenderParts {
  readonly door: ServerDoor;
  readonly store: DeviceStore;
  readonly who: { readonly person: string; readonly device: string };
  readonly now: () => string;
}

/** Places in one question after the last line in common. */
const PLACES_AT_ONCE = 20;
const BRING_BACK_MS = 60_000;
const PART = { lines: PART_LINES, bytes: PART_BYTES };
/**
 * The line that tells what came back stands in the station's own place: lines of that place go in one part, since those
 * of a second would not follow on what they did.
 */
const WHOLE_PART = { lines: PUSH_LIMIT, bytes: PUSH_BYTES_LIMIT / 2 };
/** Refusals of what was offered, for which asking again as it is would not help. */
const POOR: ReadonlySet<number> = new Set([400, 409, 413, 422]);

/** Makes this device's log and the station's one again, after the station's database was put back to an earlier copy. */
export class BranchMender {
  readonly #parts: MenderParts;

  constructor(parts: MenderParts) {
    this.#parts = parts;
  }

  /** True where the station lacks lines that this device holds, as far as is known here. */
  isOpen(): Promise<boolean> {
    return this.#parts.store.shelf.isOpen();
  }

  /** Finds where this device's log and the station's part, and sets aside what goes beyond. */
  async part(places: readonly string[]): Promise<Reach> {
    const { door, store, now } = this.#parts;
    for (let from = 0; from < places.length; from += PLACES_AT_ONCE) {
      const some = places.slice(from, from + PLACES_AT_ONCE);
      const heads = await Promise.all(some.map(async (place) => [place, await store.shelf.locate(place)] as const));
      const json = { places: Object.fromEntries(heads) };
      const reply = await door.ask<CommonReply>({ method: "POST", path: "/api/log/common", json });
      if (reply.kind !== "answered") return reachOf(reply);
      const common: Cursor = Object.fromEntries(some.map((place) => [place, reply.value.common[place] ?? 0]));
      await store.shelf.setAside(common);
      await notePutBack(store, now());
    }
    return ONLINE;
  }

  /** Offers what was set aside; done once the station has taken it or will not without an administrator's word. */
  async bringBack(): Promise<Reach> {
    const { store, now } = this.#parts;
    await notePutBack(store, now(), { atLeast: (await store.shelf.lost()).length });
    for (const branch of stationFirst(await store.shelf.branches())) {
      const reach = branch.unvouched ? await this.#sendOwnAnew(branch) : await this.#offer(branch);
      if (reach.kind !== "online") return reach;
    }
    return ONLINE;
  }

  /**
   * After the whole log was pulled: what was sent and is not in it was lost by the station between answer and pull.
   *
   * @returns whether lines are where they were, and whether something is to be sent again
   */
  async settle(): Promise<"as-before" | "settled" | "to-send"> {
    const { store, now } = this.#parts;
    const wasOpen = await this.isOpen();
    if (wasOpen) await store.shelf.settle();
    const sent = (await store.outbox()).filter(({ state }) => state === "sent");
    if (sent.length === 0) return wasOpen ? "settled" : "as-before";
    const held = await store.heldOf(sent.map(({ entry }) => entry.id));
    const lost = sent.filter(({ entry }) => !held.has(entry.id));
    await store.replaceOutbox([...held], []);
    if (lost.length === 0) return "settled";
    await notePutBack(store, now(), { more: lost.length });
    await this.#sendAgain(lost);
    return "to-send";
  }

  /** Takes in, by the word of the administrator who sits here, what nothing vouches for. */
  async takeByWord(): Promise<Reply<BringBackReply>> {
    let last: Reply<BringBackReply> = { kind: "answered", value: { kept: [], clashing: [] } };
    for (const branch of await this.#parts.store.shelf.branches()) {
      for (const lines of branch.unvouched ? cut(branch.lines.filter(({ clashing }) => clashing !== true)) : []) {
        last = await this.#ask({ by: "word", lines: lines.map(({ kept }) => ({ entry: kept.entry })) });
        if (last.kind !== "answered") return last;
        await this.#parts.store.shelf.noteClashing(branch.branch, last.value.clashing);
      }
    }
    return last;
  }

  /** Takes in, by the same word, lines that other devices handed over, each group as it is told in the log. */
  async takeHanded(lines: readonly Entry[]): Promise<Reply<BringBackReply>> {
    let last: Reply<BringBackReply> = { kind: "answered", value: { kept: [], clashing: [] } };
    for (const part of cut(lines)) {
      last = await this.#ask({ by: "handed", lines: part.map((entry) => ({ entry })) });
      if (last.kind !== "answered") return last;
    }
    return last;
  }

  /** Proves a branch from its end back, then offers it from its beginning on: each line follows on as it did. */
  async #offer(branch: Branch): Promise<Reach> {
    let { next, proved = [] } = branch;
    const { shelf } = this.#parts.store;
    while (next.seq > branch.common.seq) {
      const reply = await this.#prove(branch, next);
      if (reply.kind !== "answered") return this.#declined(branch, reply);
      [next, proved] = [reply.value, [...proved, next]];
      await shelf.note(branch.branch, { next, proved });
    }
    while (proved.length > 0) {
      const reply = await this.#ask(runUpTo(branch, proved.at(-1)!));
      if (reply.kind !== "answered") return this.#declined(branch, reply);
      await shelf.noteClashing(branch.branch, reply.value.clashing);
      proved = proved.slice(0, -1);
      await shelf.note(branch.branch, { proved });
    }
    return ONLINE;
  }

  /** The head before the last part up to this one, with the station's word for it; none is wanted where it has it. */
  async #prove(branch: Branch, end: Branch["next"]): Promise<Reply<Branch["next"]>> {
    const { common } = branch;
    const run = runUpTo(branch, end);
    if (run.before.seq <= common.seq) return { kind: "answered", value: common };
    const reply = await this.#ask({ ...run, only: "prove" });
    if (reply.kind !== "answered") return reply;
    const { before } = reply.value;
    if (before === undefined) return { kind: "answered", value: common };
    return { kind: "answered", value: { seq: before.seq, hash: before.hash, voucher: before.voucher } };
  }

  async #declined(branch: Branch, reply: Exclude<Reply<unknown>, { kind: "answered" }>): Promise<Reach> {
    if (!isPoor(reply)) return reachOf(reply);
    await this.#parts.store.shelf.note(branch.branch, { unvouched: true });
    return this.#sendOwnAnew({ ...branch, unvouched: true });
  }

  /** Without a voucher a line goes as it first did: from its writer, on the device it was written on. */
  async #sendOwnAnew(branch: Branch): Promise<Reach> {
    const { store, who } = this.#parts;
    const own = branch.lines
      .map(({ kept }) => kept.entry)
      .filter((entry) => entry.by === who.person && entry.device === who.device);
    const ids = own.map(({ id }) => id);
    const held = await store.heldOf(ids);
    await store.putOutbox(own.filter(({ id }) => !held.has(id)).map(unsent));
    await store.shelf.remove(branch.branch, ids);
    return ONLINE;
  }

  /** By the station's word where it gave one: whoever wrote them, and whatever has changed since. */
  async #sendAgain(lost: readonly OutboxLine[]): Promise<void> {
    const { store } = this.#parts;
    const vouched = lost.flatMap(({ entry, voucher }) => (voucher === undefined ? [] : [{ entry, voucher }]));
    const kept = new Set<string>();
    for (const lines of cut(vouched)) {
      const reply = await this.#ask({ by: "lines", lines: [...lines] });
      if (reply.kind === "answered") for (const id of reply.value.kept) kept.add(id);
    }
    await store.putOutbox(lost.filter(({ entry }) => !kept.has(entry.id)).map(({ entry }) => unsent(entry)));
  }

  #ask(json: BringBackRequest): Promise<Reply<BringBackReply>> {
    return this.#parts.door.ask({ method: "POST", path: "/api/log/bring-back", json, patience: BRING_BACK_MS });
  }
}

/** What comes back is told in the station's own place: first comes what stood there. */
function stationFirst(branches: readonly Branch[]): readonly Branch[] {
  const [first, rest]: [Branch[], Branch[]] = [[], []];
  for (const branch of branches) (branch.place === STATION_PLACE ? first : rest).push(branch);
  return [...first, ...rest];
}

function unsent(entry: Entry): OutboxLine {
  return { entry, state: "unsent" };
}

function isPoor(reply: Reply<unknown>): boolean {
  return reply.kind === "refused" && (reply.problem.code === PROBLEM.notVouched || POOR.has(reply.status));
}

/** The last lines up to this head that fit into one part, with the head before them. */
function runUpTo({ lines, common, place }: Branch, end: Branch["next"]): BringBackRequest & { readonly by: "run" } {
  const upTo = lines.filter(({ seq }) => seq <= end.seq).map(({ kept }) => kept);
  const most = place === STATION_PLACE ? WHOLE_PART : PART;
  let [from, bytes] = [upTo.length, 0];
  while (from > 0 && upTo.length - from < most.lines) {
    bytes += JSON.stringify(upTo[from - 1]).length;
    if (bytes > most.bytes && from < upTo.length) break;
    from -= 1;
  }
  const earlier = upTo[from - 1];
  const before = earlier ? { seq: earlier.seq, hash: earlier.hash } : { seq: common.seq, hash: common.hash };
  return { by: "run", before, lines: upTo.slice(from), voucher: end.voucher ?? "" };
}

/** In parts of few enough lines and bytes. */
function cut<Line>(lines: readonly Line[]): readonly (readonly Line[])[] {
  const parts: Line[][] = [];
  let bytes = 0;
  for (const line of lines) {
    const size = JSON.stringify(line).length;
    const last = parts.at(-1);
    const fits = last !== undefined && last.length < PART_LINES && bytes + size <= PART_BYTES;
    if (fits) last.push(line);
    else parts.push([line]);
    bytes = fits ? bytes + size : size;
  }
  return parts;
}
