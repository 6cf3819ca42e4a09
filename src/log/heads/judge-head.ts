import { hexToBytes } from "@noble/hashes/utils.js";
import { isConsistent } from "../tree/tree-proof.ts";
import { isSignedByItsKey, type SignedHead } from "./signed-head.ts";

/** What somebody who kept a head makes of the one shown now. */
export type HeadVerdict =
  /** The log shown begins with all that was seen. */
  | { readonly kind: "goes-on" }
  /** The station shows fewer lines than it had signed. */
  | { readonly kind: "cut-off"; readonly because: string }
  /** What is shown does not begin with what was seen. */
  | { readonly kind: "another-history"; readonly because: string }
  /** Nobody is bound by what is shown. */
  | { readonly kind: "not-signed"; readonly because: string };

/**
 * Holds a head that is shown against the one seen before.
 *
 * @param seen - the newest head kept, its signature checked when it was taken; undefined for a place not seen before
 * @param shown - what the station shows now
 * @param proof - that `shown` begins with `seen`, hex; needed where it has more lines
 * @param trusted - keys whose signature counts
 */
export function judgeHead(
  seen: SignedHead | undefined,
  shown: SignedHead,
  proof: readonly string[],
  trusted: ReadonlySet<string>,
): HeadVerdict {
  const { place, number } = shown;
  if (!isSignedByItsKey(shown)) {
    return { kind: "not-signed", because: `the head of ${place} at line ${number} does not have a good signature` };
  }
  if (!trusted.has(shown.key)) {
    return { kind: "not-signed", because: `the head of ${place} is signed with a key that no known key vouches for` };
  }
  return seen === undefined ? { kind: "goes-on" } : judgeHistory(seen, shown, proof);
}

function judgeHistory(seen: SignedHead, shown: SignedHead, proof: readonly string[]): HeadVerdict {
  const { place } = seen;
  const signed = `line ${seen.number} of ${place}, as signed ${seen.at}`;
  if (shown.place !== place) return { kind: "another-history", because: `${shown.place} is shown for ${place}` };
  if (shown.number < seen.number) {
    return { kind: "cut-off", because: `${place} ends at line ${shown.number} now; ${signed}, is missing` };
  }
  const isSame = shown.number > seen.number || shown.hash === seen.hash;
  if (isSame && isConsistent(treeOf(seen), treeOf(shown), proof.map(bytesOf))) return { kind: "goes-on" };
  return { kind: "another-history", because: `what is shown of ${place} now does not begin with ${signed}` };
}

function treeOf({ number, root }: SignedHead): { size: number; root: Uint8Array } {
  return { size: number, root: bytesOf(root) };
}

/** No bytes for what is no hash: then nothing is consistent with it. */
function bytesOf(hex: string): Uint8Array {
  return /^[0-9a-f]{64}$/.test(hex) ? hexToBytes(hex) : new Uint8Array();
}
