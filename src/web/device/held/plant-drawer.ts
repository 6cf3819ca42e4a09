import type { Planting } from "#readiness";
import type { DeviceStore } from "./device-store.ts";

const NOTE_PREFIX = "plant:";
/** Figures and capitals that nobody mistakes for one another. */
const LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const NONCE_LETTERS = 20;

/**
 * What somebody planted for a drill, in the open, on the one device on which it was planted: beside the log, under the
 * device's own lock where it has one. The log has only its hash.
 */
export class PlantDrawer {
  readonly #store: DeviceStore;

  constructor(store: DeviceStore) {
    this.#store = store;
  }

  /** Kept before its hash is written: what is lost in between was never planted. */
  keep(planting: Planting): Promise<void> {
    return this.#store.putNote(NOTE_PREFIX + planting.plant, planting);
  }

  /** Undefined where it was planted on another device, or this one was emptied. */
  read(plant: string): Promise<Planting | undefined> {
    return this.#store.note<Planting>(NOTE_PREFIX + plant);
  }

  /** Letters of chance that hide what is planted: 100 bits. */
  newNonce(): string {
    const bytes = crypto.getRandomValues(new Uint8Array(NONCE_LETTERS));
    return [...bytes].map((byte) => LETTERS[byte % LETTERS.length]).join("");
  }
}
