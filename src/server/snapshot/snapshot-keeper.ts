import { createHmac, timingSafeEqual } from "node:crypto";
import { promisify } from "node:util";
import { brotliCompress, brotliDecompress, constants } from "node:zlib";
import type { Pattern } from "#kit";
import { hashText } from "#log";
import { SNAPSHOT_FORM, type EpochStore, type ShelvedSnapshot, type SnapshotReply, type SnapshotShelf } from "#station";

/** The most that a snapshot may come to unpacked [byte]: what unpacks to more is none of ours. */
const MOST_BYTES = 256 * 1024 * 1024;

export type Snapshot = SnapshotReply & { readonly kind: "snapshot" };

/** A reply as it goes over the wire, plain and packed. */
export interface WrittenSnapshot {
  readonly text: string;
  readonly brotli: Uint8Array;
}

/** A snapshot from before the start, as it was made. */
export interface Recalled {
  readonly reply: Snapshot;
  readonly written: WrittenSnapshot;
}

interface KeeperParts {
  readonly shelf: SnapshotShelf;
  readonly secrets: Pick<EpochStore, "voucherKey">;
  /** Those that this server folds by. */
  readonly patterns: () => readonly Pattern[];
}

/**
 * Keeps the newest snapshot beside the log, sealed, and knows its own again. Whether it is of this log, and true, is for
 * whoever reads it to find out.
 */
export class SnapshotKeeper {
  readonly #shelf: SnapshotShelf;
  readonly #secrets: KeeperParts["secrets"];
  readonly #patterns: KeeperParts["patterns"];

  constructor({ shelf, secrets, patterns }: KeeperParts) {
    this.#shelf = shelf;
    this.#secrets = secrets;
    this.#patterns = patterns;
  }

  /** What a snapshot must be made by. */
  get #about(): string {
    return JSON.stringify({ form: SNAPSHOT_FORM, patterns: markOf(this.#patterns()) });
  }

  /** The one that was kept, where it is sealed by this station and made by the same form and patterns. */
  async recall(): Promise<Recalled | undefined> {
    const kept = await this.#shelf.shelvedSnapshot();
    if (kept === undefined || kept.about !== this.#about || !(await this.#isOurs(kept))) return undefined;
    const text = (await promisify(brotliDecompress)(kept.packed, { maxOutputLength: MOST_BYTES })).toString();
    return { reply: JSON.parse(text) as Snapshot, written: { text, brotli: kept.packed } };
  }

  async keep({ brotli: packed }: WrittenSnapshot): Promise<void> {
    const about = this.#about;
    await this.#shelf.shelveSnapshot({ about, packed, seal: await this.#seal({ about, packed }) });
  }

  async forget(): Promise<void> {
    await this.#shelf.shelveSnapshot(undefined);
  }

  async #isOurs(kept: ShelvedSnapshot): Promise<boolean> {
    const [told, right] = [Buffer.from(kept.seal, "hex"), Buffer.from(await this.#seal(kept), "hex")];
    return told.length === right.length && timingSafeEqual(told, right);
  }

  /** @source IETF RFC 2104, HMAC: Keyed-Hashing for Message Authentication, section 2, 1997 */
  async #seal({ about, packed }: Omit<ShelvedSnapshot, "seal">): Promise<string> {
    const key = await this.#secrets.voucherKey();
    return createHmac("sha256", key).update(`drykeel snapshot 1\n${about}\n`).update(packed).digest("hex");
  }
}

/** Packed beside the server's other work. */
export async function writeSnapshot(reply: SnapshotReply): Promise<WrittenSnapshot> {
  const text = JSON.stringify(reply);
  const params = { [constants.BROTLI_PARAM_QUALITY]: 4, [constants.BROTLI_PARAM_LGWIN]: 22 };
  return { text, brotli: await promisify(brotliCompress)(text, { params }) };
}

function markOf(patterns: readonly Pattern[]): string {
  return hashText(
    patterns
      .map((pattern) => JSON.stringify(pattern))
      .sort()
      .join("\n"),
  );
}
