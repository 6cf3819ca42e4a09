import { HASH_BYTES } from "./tree-hash.ts";

/** Hashes one after another in one piece of memory that grows. */
export class HashRow {
  #bytes = new Uint8Array(16 * HASH_BYTES);
  #length = 0;

  get length(): number {
    return this.#length;
  }

  at(index: number): Uint8Array {
    return this.#bytes.slice(index * HASH_BYTES, (index + 1) * HASH_BYTES);
  }

  push(hash: Uint8Array): void {
    const end = this.#length * HASH_BYTES;
    if (end === this.#bytes.length) {
      const wider = new Uint8Array(end * 2);
      wider.set(this.#bytes);
      this.#bytes = wider;
    }
    this.#bytes.set(hash, end);
    this.#length += 1;
  }
}
