import type { PhotoRef } from "#readiness";
import type { Ambient } from "#station";
import type { DeviceStore } from "./device-store.ts";
import { shrinkPhoto } from "./photo-shrink.ts";
import type { ServerDoor } from "../sync/server-door.ts";

/** Photos on this device: kept before they are sent, fetched when first looked at. */
export class PhotoShelf {
  readonly #store: DeviceStore;
  readonly #door: ServerDoor;
  readonly #ambient: Ambient;
  readonly #urls = new Map<string, string>();

  constructor(store: DeviceStore, door: ServerDoor, ambient: Ambient) {
    this.#store = store;
    this.#door = door;
    this.#ambient = ambient;
  }

  async keep(file: Blob): Promise<PhotoRef> {
    const { ref, bytes } = await shrinkPhoto(file);
    await this.#store.putPhoto({ hash: ref.hash, mime: ref.mime, bytes }, this.#ambient.now());
    return ref;
  }

  /** Address of the photo within this window; fetched and kept where it is not here yet. */
  async url(hash: string): Promise<string | undefined> {
    const known = this.#urls.get(hash);
    if (known !== undefined) return known;
    const photo = (await this.#store.photo(hash)) ?? (await this.#fetch(hash));
    if (!photo) return undefined;
    const url = this.#urls.get(hash) ?? URL.createObjectURL(new Blob([photo.bytes.slice()], { type: photo.mime }));
    this.#urls.set(hash, url);
    return url;
  }

  async #fetch(hash: string) {
    const reply = await this.#door.bytes(`/api/photos/${hash}`);
    if (reply.kind !== "answered") return undefined;
    const photo = { hash, mime: reply.value.mime, bytes: reply.value.content };
    await this.#store.putPhoto(photo);
    return photo;
  }
}
