import {
  PlaceTrees,
  signHead,
  signHeadList,
  type KeptEntry,
  type LogHead,
  type ProvedLine,
  type SignedHead,
  type SignedHeadList,
  type StationKey,
} from "#log";
import { isTakenOut, newestReceipt, type Ambient, type Cursor, type HeadShelf, type LogStore } from "#station";
import { everyPlace, LogFollower } from "../log/log-follower.ts";
import type { Signing } from "./signing.ts";

/** Since when the log is signed, kept outside the database. */
export interface SignedMark {
  read(): string | undefined;
  note(at: string): void;
}

interface Needs {
  readonly since?: SignedMark;
  readonly store: LogStore;
  readonly shelf: HeadShelf;
  readonly ambient: Ambient;
  readonly signing: Signing;
}

/** A head with what shows that the log goes on from an earlier one, hex. */
export interface ShownHead {
  readonly head: SignedHead;
  readonly proof: readonly string[];
}

/** Signs where the log stands, and proves it: to devices at each exchange, and on paper. Reads the log once, then on. */
export class HeadDesk {
  readonly #needs: Needs;
  #trees = new PlaceTrees();
  readonly #follower: LogFollower;
  readonly #signed = new Map<string, SignedHead>();

  constructor(needs: Needs) {
    this.#needs = needs;
    const following = {
      places: () => everyPlace(needs.store),
      take: (page: readonly KeptEntry[]) => this.#trees.take(page),
      startOver: () => this.#startOver(),
    };
    this.#follower = new LogFollower(needs.store, following);
  }

  /**
   * The newest head of every place, signed.
   *
   * @param seen - numbers of the heads that the asker keeps
   */
  async show(seen: Cursor): Promise<readonly ShownHead[]> {
    await this.#follower.catchUp();
    const heads = this.#trees.heads().map((head) => this.#sign(head));
    await this.#keep(heads);
    return heads.map((head) => ({ head, proof: this.#trees.consistency(head.place, seen[head.place] ?? 0) }));
  }

  /** Signs a log that was never signed, such as one of the version before: from then on its places are named. */
  async signFirst(): Promise<void> {
    if ((await this.#needs.shelf.signedList()) === undefined) await this.show({});
  }

  /** Every public key of the station, oldest first. */
  keys(): readonly StationKey[] {
    return this.#needs.signing.read().keys;
  }

  /** Lines of one place with the proof of each, and the head that all are proved against; undefined for a place without. */
  async prove(
    place: string,
    lines: readonly KeptEntry[],
  ): Promise<{ head: SignedHead; lines: ProvedLine[] } | undefined> {
    const shown = (await this.show({})).find(({ head }) => head.place === place);
    if (shown === undefined) return undefined;
    const proved = lines.map(async (line) => {
      const [before] = await this.#needs.store.since([place], { [place]: line.seq - 2 }, 1);
      return this.#trees.prove(line, line.seq === 1 ? undefined : before, shown.head.number);
    });
    return { head: shown.head, lines: await Promise.all(proved) };
  }

  #startOver(): void {
    this.#trees = new PlaceTrees();
    this.#signed.clear();
  }

  /** A head is signed once with each key. */
  #sign(head: LogHead): SignedHead {
    const { secret, keys } = this.#needs.signing.read();
    const before = this.#signed.get(head.place);
    if (before?.hash === head.hash && before.key === keys.at(-1)!.key) return before;
    const signed = signHead(head, this.#needs.ambient.now(), secret);
    this.#signed.set(head.place, signed);
    return signed;
  }

  /**
   * Keeps what is new, where all that was signed before is still there and in the log. Else nothing is put in its place:
   * that is what `verify` finds it by.
   */
  async #keep(heads: readonly SignedHead[]): Promise<void> {
    const { shelf, signing, ambient, since } = this.#needs;
    const [kept, list] = [await shelf.signedHeads(), await shelf.signedList()];
    const newer = heads.filter((head) => !kept.some(({ place, hash }) => place === head.place && hash === head.hash));
    if (heads.length === 0 || (newer.length === 0 && list !== undefined)) return;
    if (!(await this.#isWhole(kept, list))) return;
    const signed = signHeadList(heads, ambient.now(), signing.read().secret);
    await shelf.keepSigned(signed, newer);
    since?.note(signed.at);
  }

  async #isWhole(kept: readonly SignedHead[], list: SignedHeadList | undefined): Promise<boolean> {
    const places = new Set(kept.map(({ place }) => place));
    const isIn = [...kept, ...(list?.heads ?? [])].every((head) => this.#trees.beginsWith(head));
    if (list !== undefined) return isIn && list.heads.every(({ place }) => places.has(place));
    const [first, newest] = [this.#needs.since?.read(), await newestReceipt(this.#needs.store)];
    return isIn && !isTakenOut(first, newest);
  }
}
