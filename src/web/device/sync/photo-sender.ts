import type { MissingPhotosReply } from "#station";
import type { DeviceStore } from "../held/device-store.ts";
import { ONLINE, reachOf, type Reach } from "./reach.ts";
import type { Reply, ServerDoor } from "./server-door.ts";

export interface PhotoSenderParts {
  readonly door: ServerDoor;
  readonly store: DeviceStore;
  readonly now: () => string;
  readonly onChange: () => Promise<void>;
}

/** Hashes in one question. */
const MOST_HASHES = 1000;
/**
 * After so long all are asked about again [ms]: a copy may be put back between two exchanges, and lack a photo and no line.
 * A hash has 64 characters: 200 photos cost 13 KB.
 */
const ASKED_FOR_MS = 15 * 60_000;

/** Sends photos that the station is not known to hold. */
export class PhotoSender {
  readonly #parts: PhotoSenderParts;
  /** When the station was asked about all [ms since 1970]; undefined where it must be. */
  #askedAt: number | undefined;

  constructor(parts: PhotoSenderParts) {
    this.#parts = parts;
  }

  /** The station may have lost some since it was asked about all of them. */
  askAgain(): void {
    this.#askedAt = undefined;
  }

  /**
   * Sends those that the station says it lacks. It is asked about every photo held here the first time since the app was
   * opened, after it was out of reach, and after a quarter of an hour: a database that was put back may lack a photo and
   * no line.
   */
  async send(): Promise<Reach> {
    const now = Date.parse(this.#parts.now());
    if (this.#askedAt === undefined || Math.abs(now - this.#askedAt) >= ASKED_FOR_MS) {
      const reach = await this.#askAboutAll();
      if (reach.kind !== "online") return reach;
      this.#askedAt = now;
    }
    const hashes = (await this.#parts.store.unsentPhotos()).slice(0, 200).map(({ hash }) => hash);
    if (hashes.length === 0) return ONLINE;
    const reply = await this.#askMissing(hashes);
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

  async #askAboutAll(): Promise<Reach> {
    const { store, now } = this.#parts;
    const held = await store.sentPhotos();
    for (let from = 0; from < held.length; from += MOST_HASHES) {
      const reply = await this.#askMissing(held.slice(from, from + MOST_HASHES));
      if (reply.kind !== "answered") return reachOf(reply);
      await store.markPhotosUnsent(reply.value.missing, now());
    }
    return ONLINE;
  }

  #askMissing(hashes: readonly string[]): Promise<Reply<MissingPhotosReply>> {
    return this.#parts.door.ask({ method: "POST", path: "/api/photos/missing", json: { hashes } });
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
}
