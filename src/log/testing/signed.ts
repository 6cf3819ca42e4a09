import { bytesToHex } from "@noble/hashes/utils.js";
import { emptyChain, extendChain } from "../chain.ts";
import type { Entry, KeptEntry } from "../entry.ts";
import { leafOf } from "../heads/line-proof.ts";
import { signHead, type SignedHead } from "../heads/signed-head.ts";
import { HashTree } from "../tree/hash-tree.ts";
import { makeEntry } from "./entries.ts";

/** A seed for tests, told apart by a number. */
export function seedOf(number: number): Uint8Array {
  return new Uint8Array(32).fill(number);
}

/** Lines of "harbour", entries changed as told. */
export function linesOf(count: number, change: (entry: Entry) => Entry = (entry) => entry): KeptEntry[] {
  const entries = Array.from({ length: count }, (_, at) => change(makeEntry(at + 1)));
  return extendChain(emptyChain("harbour"), entries, "2027-01-01T00:01:00Z");
}

/** The Merkle tree over some lines. */
export function treeOf(lines: readonly KeptEntry[]): HashTree {
  const tree = new HashTree();
  for (const { hash } of lines) tree.append(leafOf(hash));
  return tree;
}

/** The head of a log's first lines, signed. */
export function headOf(lines: readonly KeptEntry[], number = lines.length, seed = seedOf(1)): SignedHead {
  const root = bytesToHex(treeOf(lines).root(number));
  const head = { place: "harbour", number, hash: lines[number - 1]!.hash, root };
  return signHead(head, "2027-01-02T00:00:00.000Z", seed);
}
