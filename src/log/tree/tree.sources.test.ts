import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { describe, expect, test } from "vitest";
import references from "#test/references/log-tree.json" with { type: "json" };
import { HashTree } from "./hash-tree.ts";
import { leafHash, nodeHash } from "./tree-hash.ts";
import { isConsistent, isIncluded } from "./tree-proof.ts";

interface Row<Inputs, Expected> {
  readonly id: string;
  readonly source: string;
  readonly inputs: Inputs;
  readonly expected: Expected;
}

function rowsOf<Inputs, Expected>(prefix: string): Row<Inputs, Expected>[] {
  return references.filter(({ id }) => id.startsWith(prefix)) as unknown as Row<Inputs, Expected>[];
}

const roots = rowsOf<{ readonly leaves_hex: readonly string[] }, string>("log-root");
const leaves = roots.find(({ id }) => id === "log-root-8")!.inputs.leaves_hex;

function treeOf(hex: readonly string[]): HashTree {
  const tree = new HashTree();
  for (const leaf of hex) tree.append(hexToBytes(leaf));
  return tree;
}

function headOf(size: number) {
  return { size, root: treeOf(leaves.slice(0, size)).root() };
}

describe("Merkle tree", () => {
  test.each(roots)("$source: $id", ({ inputs, expected }) => {
    expect(bytesToHex(treeOf(inputs.leaves_hex).root())).toBe(expected);
    expect(bytesToHex(treeOf(leaves).root(inputs.leaves_hex.length))).toBe(expected);
  });

  type Hashes = { readonly leaf: string; readonly node: string };
  type Ascii = { readonly leaf_ascii: string; readonly node_children_ascii: readonly string[] };
  test.each(rowsOf<Ascii, Hashes>("log-leaf-node"))("$source: $id", ({ inputs, expected }) => {
    const [left = "", right = ""] = inputs.node_children_ascii;
    expect(bytesToHex(leafHash(utf8ToBytes(inputs.leaf_ascii)))).toBe(expected.leaf);
    expect(bytesToHex(nodeHash(utf8ToBytes(left), utf8ToBytes(right)))).toBe(expected.node);
  });

  type LeafCase = { readonly index: number; readonly size: number };
  test.each(rowsOf<LeafCase, readonly string[]>("log-incl"))(
    "$source: $id",
    ({ inputs: { index, size }, expected }) => {
      const path = treeOf(leaves).inclusion(index, size);
      expect(path.map(bytesToHex)).toEqual(expected);
      expect(isIncluded(index, leafHash(hexToBytes(leaves[index]!)), expected.map(hexToBytes), headOf(size))).toBe(
        true,
      );
    },
  );

  type Sizes = { readonly m: number; readonly n: number };
  test.each(rowsOf<Sizes, readonly string[]>("log-cons"))("$source: $id", ({ inputs: { m, n }, expected }) => {
    expect(treeOf(leaves).consistency(m, n).map(bytesToHex)).toEqual(expected);
    expect(isConsistent(headOf(m), headOf(n), expected.map(hexToBytes))).toBe(true);
  });
});
