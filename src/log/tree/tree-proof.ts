import { emptyRoot, nodeHash, sameBytes } from "./tree-hash.ts";

/** A tree as far as somebody knows it: how many leaves, and their hash. */
export interface TreeHead {
  readonly size: number;
  readonly root: Uint8Array;
}

/**
 * Whether a path shows that a leaf is in a tree.
 *
 * @param index - of the leaf, from 0
 * @param leaf - `leafHash` of its data
 * @source IETF RFC 9162, Certificate Transparency Version 2.0, section 2.1.3.2, 2021
 */
export function isIncluded(index: number, leaf: Uint8Array, path: readonly Uint8Array[], tree: TreeHead): boolean {
  if (!isCount(index) || !isCount(tree.size) || index >= tree.size) return false;
  const walk = new Walk(index, tree.size - 1);
  let root = leaf;
  for (const part of path) {
    if (walk.isOver) return false;
    root = walk.turnsLeft() ? nodeHash(part, root) : nodeHash(root, part);
    walk.up();
  }
  return walk.isOver && sameBytes(root, tree.root);
}

/**
 * Whether a proof shows that a tree begins with all leaves of an earlier one, unchanged. Two of one size are consistent
 * where they are the same; every tree begins with one that has no leaf.
 *
 * @source IETF RFC 9162, Certificate Transparency Version 2.0, section 2.1.4.2, 2021
 */
export function isConsistent(earlier: TreeHead, later: TreeHead, proof: readonly Uint8Array[]): boolean {
  if (!isCount(earlier.size) || !isCount(later.size) || earlier.size > later.size) return false;
  if (earlier.size === later.size) return proof.length === 0 && sameBytes(earlier.root, later.root);
  if (earlier.size === 0) return proof.length === 0 && sameBytes(earlier.root, emptyRoot());
  const isWhole = Number.isInteger(Math.log2(earlier.size));
  const [first, ...rest] = isWhole ? [earlier.root, ...proof] : proof;
  return first !== undefined && proof.length > 0 && leadsToBoth(first, rest, earlier, later);
}

function leadsToBoth(first: Uint8Array, rest: readonly Uint8Array[], earlier: TreeHead, later: TreeHead): boolean {
  const walk = new Walk(earlier.size - 1, later.size - 1);
  walk.skipRights();
  let [before, after] = [first, first];
  for (const part of rest) {
    if (walk.isOver) return false;
    if (walk.turnsLeft()) [before, after] = [nodeHash(part, before), nodeHash(part, after)];
    else after = nodeHash(after, part);
    walk.up();
  }
  return walk.isOver && sameBytes(before, earlier.root) && sameBytes(after, later.root);
}

/** The way from a leaf up to the root: fn and sn of the RFC. */
class Walk {
  #node: number;
  #last: number;

  constructor(node: number, last: number) {
    this.#node = node;
    this.#last = last;
  }

  get isOver(): boolean {
    return this.#last === 0;
  }

  /** True where the next part stands to the left; then goes past the levels without one to the right. */
  turnsLeft(): boolean {
    if (this.#node % 2 === 0 && this.#node !== this.#last) return false;
    while (this.#node % 2 === 0 && this.#node !== 0) this.up();
    return true;
  }

  skipRights(): void {
    while (this.#node % 2 === 1) this.up();
  }

  up(): void {
    this.#node = Math.floor(this.#node / 2);
    this.#last = Math.floor(this.#last / 2);
  }
}

function isCount(given: number): boolean {
  return Number.isInteger(given) && given >= 0 && given < 2 ** 31;
}
