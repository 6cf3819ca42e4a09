import { sha256 } from "@noble/hashes/sha2.js";
import { concatBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { HashTree } from "./hash-tree.ts";
import { leafHash } from "./tree-hash.ts";
import { isConsistent, isIncluded, type TreeHead } from "./tree-proof.ts";

const MOST = 70;
const data = Array.from({ length: MOST }, (_, at) => utf8ToBytes(`line ${at}`));
const tree = new HashTree();
for (const leaf of data) tree.append(leaf);

/** The definition of RFC 9162, section 2.1.1, word for word and without any memory. */
function rootByDefinition(leaves: readonly Uint8Array[]): Uint8Array {
  if (leaves.length === 0) return sha256(new Uint8Array());
  if (leaves.length === 1) return sha256(concatBytes(Uint8Array.of(0), leaves[0]!));
  let k = 1;
  while (k * 2 < leaves.length) k *= 2;
  const parts = [rootByDefinition(leaves.slice(0, k)), rootByDefinition(leaves.slice(k))] as const;
  return sha256(concatBytes(Uint8Array.of(1), ...parts));
}

function headOf(size: number): TreeHead {
  return { size, root: tree.root(size) };
}

function spoil(hash: Uint8Array): Uint8Array {
  return hash.map((byte, at) => (at === 7 ? byte ^ 1 : byte));
}

const size = fc.integer({ min: 1, max: MOST });
const pair = fc.tuple(size, size).map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const);
const given = { seed: 9162, numRuns: 400 };

describe("Merkle tree", () => {
  test("has the root of the definition at every size", () => {
    for (let leaves = 0; leaves <= MOST; leaves++) {
      expect(tree.root(leaves)).toEqual(rootByDefinition(data.slice(0, leaves)));
    }
  });

  test("proves every leaf in every tree, and nothing where anything is changed", () => {
    fc.assert(
      fc.property(pair, fc.nat(), ([least, leaves], pick) => {
        const index = least - 1;
        const path = tree.inclusion(index, leaves);
        const leaf = leafHash(data[index]!);
        expect(isIncluded(index, leaf, path, headOf(leaves))).toBe(true);
        expect(isIncluded(index, spoil(leaf), path, headOf(leaves))).toBe(false);
        expect(isIncluded(index, leaf, [...path, leaf], headOf(leaves))).toBe(false);
        expect(isIncluded(index, leaf, path, { ...headOf(leaves), root: spoil(tree.root(leaves)) })).toBe(false);
        if (leaves > 1) {
          const at = pick % path.length;
          expect(isIncluded(index, leaf, path.with(at, spoil(path[at]!)), headOf(leaves))).toBe(false);
          expect(isIncluded(index, leaf, path.slice(0, -1), headOf(leaves))).toBe(false);
          expect(isIncluded((index + 1) % leaves, leaf, path, headOf(leaves))).toBe(false);
        }
      }),
      given,
    );
  });

  test("proves every earlier tree the beginning of every later, and no other", () => {
    fc.assert(
      fc.property(pair, fc.nat(), ([earlier, later], pick) => {
        const proof = tree.consistency(earlier, later);
        expect(isConsistent(headOf(earlier), headOf(later), proof)).toBe(true);
        const other = { size: earlier, root: spoil(tree.root(earlier)) };
        expect(isConsistent(other, headOf(later), proof)).toBe(false);
        expect(isConsistent(headOf(earlier), { ...headOf(later), root: spoil(tree.root(later)) }, proof)).toBe(false);
        expect(isConsistent(headOf(earlier), headOf(later), [...proof, spoil(tree.root(later))])).toBe(false);
        if (proof.length > 0) {
          const at = pick % proof.length;
          expect(isConsistent(headOf(earlier), headOf(later), proof.with(at, spoil(proof[at]!)))).toBe(false);
          expect(isConsistent(headOf(earlier), headOf(later), proof.slice(0, -1))).toBe(false);
          expect(isConsistent(headOf(later), headOf(earlier), proof)).toBe(false);
        }
      }),
      given,
    );
  });

  test("refuses sizes and places that are none", () => {
    for (const bad of [-1, 0.5, Number.NaN, 2 ** 31, MOST]) {
      expect(isIncluded(bad, leafHash(data[0]!), tree.inclusion(0), headOf(MOST))).toBe(false);
    }
    expect(isConsistent({ ...headOf(3), size: Number.NaN }, headOf(9), tree.consistency(3, 9))).toBe(false);
  });
});
