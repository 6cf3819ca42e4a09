import { InputError, printGiven } from "#base";
import { verifyChain, type ChainHead } from "./chain.ts";
import type { KeptEntry } from "./entry.ts";
import { parseInstant } from "./instant.ts";
import { validateEntry } from "./validate.ts";

/** Lines of one place without a gap, as they stood in a chain. */
export interface ChainRun {
  /** The head before the first of them. */
  readonly before: ChainHead;
  readonly lines: readonly KeptEntry[];
}

/**
 * Reads lines as a store kept them from what a device sends.
 *
 * @param field - what they are called where they came from, for the faults
 * @throws InputError LG-160 where number, hash or time of receipt is none, or the faults of the entry in it
 */
export function readRun(given: readonly unknown[], field: string): readonly KeptEntry[] {
  return given.map((one, at) => readKept(one, `${field}[${at}]`));
}

function readKept(given: unknown, field: string): KeptEntry {
  const { entry, seq, hash, received } = (given ?? {}) as Partial<Record<keyof KeptEntry, unknown>>;
  const isKept = Number.isSafeInteger(seq) && typeof hash === "string" && typeof received === "string";
  if (!isKept || parseInstant(received) === undefined) {
    const allowed = "a line as the station gave it: entry, seq, hash and received";
    const remedy = "Send the line as it was pulled, unchanged.";
    throw new InputError([{ code: "LG-160", field, got: printGiven(given), allowed, remedy }]);
  }
  return { entry: validateEntry(entry, `${field}.entry`), seq: seq as number, hash, received };
}

/**
 * The head that a run ends at, where its own chain leads there: whoever trusts that head may then trust every line of the
 * run, and the head before it. To find other lines with the same hashes is as hard as to break SHA-256.
 *
 * @returns undefined where the lines are of several places, have a gap or do not give their hashes
 */
export function endOfRun({ before, lines }: ChainRun): ChainHead | undefined {
  const verdict = verifyChain(lines, before);
  return verdict.kind === "sound" && lines.length > 0 ? { seq: verdict.head.seq, hash: verdict.head.hash } : undefined;
}
