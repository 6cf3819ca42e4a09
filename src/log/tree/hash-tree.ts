import { assert } from "#base";
import { HashRow } from "./hash-row.ts";
import { emptyRoot, leafHash, nodeHash, splitOf } from "./tree-hash.ts";

/**
 * A Merkle tree that only grows. Holds the hash of every whole part of it, 64 bytes a leaf, so that roots and proofs of
 * any size it ever had cost a few hundred hashes at most.
 *
 * @range up to 2^31 - 1 leaves
 * @source IETF RFC 9162, Certificate Transparency Version 2.0, section 2.1, 2021
 */
export class HashTree {
  /** Row k: hashes of parts of 2^k leaves each. */
  readonly #rows: HashRow[] = [new HashRow()];

  get size(): number {
    return this.#rows[0]!.length;
  }

  /** Adds a leaf at the end. */
  append(data: Uint8Array): void {
    this.#add(0, leafHash(data));
  }

  /** The tree hash of the first `size` leaves; of all where none is said. */
  root(size = this.size): Uint8Array {
    assert(size <= this.size, "a root is asked of leaves that are there");
    return size === 0 ? emptyRoot() : this.#part(0, size);
  }

  /**
   * What shows that a leaf is in the tree of the first `size` leaves.
   *
   * PATH(m, D_n), from the leaf upwards
   *
   * @param index - of the leaf, from 0
   * @source IETF RFC 9162, section 2.1.3.1, 2021
   */
  inclusion(index: number, size = this.size): Uint8Array[] {
    assert(index < size && size <= this.size, "a proof is asked of a leaf that is there");
    return this.#path(index, 0, size);
  }

  /**
   * What shows that the first `size` leaves begin with the first `earlier` leaves unchanged.
   *
   * PROOF(m, D_n); empty where both are the same or the earlier had no leaf
   *
   * @source IETF RFC 9162, section 2.1.4.1, 2021
   */
  consistency(earlier: number, size = this.size): Uint8Array[] {
    assert(earlier <= size && size <= this.size, "a proof is asked of leaves that are there");
    return earlier === 0 || earlier === size ? [] : this.#subproof(earlier, 0, size, true);
  }

  #path(index: number, from: number, leaves: number): Uint8Array[] {
    if (leaves === 1) return [];
    const left = splitOf(leaves);
    return index < left
      ? [...this.#path(index, from, left), this.#part(from + left, leaves - left)]
      : [...this.#path(index - left, from + left, leaves - left), this.#part(from, left)];
  }

  #subproof(earlier: number, from: number, leaves: number, isKnown: boolean): Uint8Array[] {
    if (earlier === leaves) return isKnown ? [] : [this.#part(from, leaves)];
    const left = splitOf(leaves);
    return earlier <= left
      ? [...this.#subproof(earlier, from, left, isKnown), this.#part(from + left, leaves - left)]
      : [...this.#subproof(earlier - left, from + left, leaves - left, false), this.#part(from, left)];
  }

  /** Hash of some leaves that a division of the tree begins with. */
  #part(from: number, leaves: number): Uint8Array {
    const level = 31 - Math.clz32(leaves);
    if (leaves === 2 ** level) return this.#rows[level]!.at(from / leaves);
    const left = splitOf(leaves);
    return nodeHash(this.#part(from, left), this.#part(from + left, leaves - left));
  }

  #add(level: number, hash: Uint8Array): void {
    const row = (this.#rows[level] ??= new HashRow());
    row.push(hash);
    if (row.length % 2 === 0) this.#add(level + 1, nodeHash(row.at(row.length - 2), hash));
  }
}
