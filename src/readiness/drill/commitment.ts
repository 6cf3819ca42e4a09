import { canonicalText, hashText } from "#log";
import type { PlantedFault } from "../kinds/drill-parts.ts";

/** What was planted, with what binds it to its drill and hides it. */
export interface Planting {
  /** Id of the kit. */
  readonly kit: string;
  readonly drill: string;
  readonly plant: string;
  /** 20 letters of chance: without it the few things that can be planted could be tried one by one. */
  readonly nonce: string;
  readonly faults: readonly PlantedFault[];
}

/**
 * The hash that is written when faults are planted, and that what is revealed must give.
 *
 * What was done is hashed by its letters and figures alone: capitals, blanks and stops may differ where it is typed again
 * from paper. The order of the faults does not count.
 *
 * @param planting - what was planted, with the nonce that hides it
 * @returns lower-case hex SHA-256 of the canonical JSON
 * @source commitment by hash; SHA-256: FIPS 180-4; canonical JSON: RFC 8785
 * @example commitmentOf({ kit: "k", drill: "d", plant: "p", nonce: "0", faults: [] }).length // 64
 */
export function commitmentOf({ kit, drill, plant, nonce, faults }: Planting): string {
  const plain = inOrder(faults).map(({ item, mode, how }) => ({ item, mode, how: plainWords(how) }));
  return hashText(canonicalText({ kit, drill, plant, nonce, faults: plain }));
}

/**
 * Faults in the order in which they are hashed and numbered: by item, mode and what was done.
 *
 * @param faults - as they were typed
 * @returns the same, sorted
 */
export function inOrder(faults: readonly PlantedFault[]): readonly PlantedFault[] {
  return faults.toSorted((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1));
}

/**
 * A nonce as it was typed from paper: capitals, without blanks and strokes, O read as 0 and I and L as 1.
 *
 * @param typed - by a person
 * @returns the letters that count
 * @example readNonce("7k3m-9qxt") // "7K3M9QXT"
 */
export function readNonce(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[^0-9A-Z]/g, "")
    .replaceAll("O", "0")
    .replace(/[IL]/g, "1");
}

function keyOf({ item, mode, how }: PlantedFault): string {
  return canonicalText([item, mode, plainWords(how)]);
}

function plainWords(how: string): string {
  return how
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, "");
}
