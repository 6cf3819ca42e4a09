import { bytesToHex } from "@noble/hashes/utils.js";
import { emptyChain } from "./chain.ts";
import type { KeptEntry } from "./entry.ts";
import { hexOf, leafOf, type ProvedLine } from "./heads/line-proof.ts";
import type { LogHead } from "./heads/signed-head.ts";
import { HashTree } from "./tree/hash-tree.ts";

interface Grown {
  readonly tree: HashTree;
  hash: string;
}

/** The Merkle tree of every place, grown with the log: heads to sign, and proofs for whoever keeps an earlier one. */
export class PlaceTrees {
  readonly #places = new Map<string, Grown>();

  /** Takes kept lines, of each place in order of number, each once. */
  take(page: readonly KeptEntry[]): void {
    for (const { entry, hash } of page) {
      const grown = this.#places.get(entry.place) ?? { tree: new HashTree(), hash };
      grown.tree.append(leafOf(hash));
      grown.hash = hash;
      this.#places.set(entry.place, grown);
    }
  }

  /** Where every place that has lines stands, by place. */
  heads(): readonly LogHead[] {
    return [...this.#places.keys()].sort().map((place) => this.head(place)!);
  }

  /** Where a place stands; undefined where it has no lines. */
  head(place: string): LogHead | undefined {
    const grown = this.#places.get(place);
    if (grown === undefined) return undefined;
    const { tree, hash } = grown;
    return { place, number: tree.size, hash, root: bytesToHex(tree.root()) };
  }

  /** Whether the place's log begins with all lines that a head stands for, unchanged. */
  beginsWith({ place, number, root }: LogHead): boolean {
    const tree = this.#places.get(place)?.tree;
    return tree !== undefined && number <= tree.size && bytesToHex(tree.root(number)) === root;
  }

  /** That the place's log begins with its first `number` lines as they were, hex; empty for numbers it does not have. */
  consistency(place: string, number: number): string[] {
    const tree = this.#places.get(place)?.tree;
    return tree === undefined || number > tree.size ? [] : hexOf(tree.consistency(number));
  }

  /**
   * A line with what shows that it is in the log of a head.
   *
   * @param before - the line before it; undefined for the first
   * @param size - number of the head; at most where the place stands
   */
  prove(line: KeptEntry, before: KeptEntry | undefined, size: number): ProvedLine {
    const { place } = line.entry;
    const path = hexOf(this.#places.get(place)?.tree.inclusion(line.seq - 1, size) ?? []);
    return { ...line, previous: before?.hash ?? emptyChain(place).hash, path };
  }
}
