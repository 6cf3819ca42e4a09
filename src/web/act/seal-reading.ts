import { isSameSeal } from "#readiness";

/** What is recorded as read where the container has no seal. */
export const NO_SEAL = "";

/** A seal as read against the one on record. */
export interface SealComparison {
  readonly seen: string;
  readonly agrees: boolean;
  readonly words: string;
}

/**
 * Holds the seal read against the record. Blanks and letter case do not count, leading noughts do.
 * Where they differ the number on record is not told: who reads again shall read the seal.
 *
 * @param seen - as typed, or {@link NO_SEAL}
 * @param recorded - number on record; undefined where none is
 */
export function compareSeal(seen: string, recorded: string | undefined): SealComparison {
  if (recorded === undefined) {
    const words = seen === NO_SEAL ? "No seal is on record, and none was found." : "No seal is on record for this kit.";
    return { seen, agrees: true, words };
  }
  if (seen === NO_SEAL) return { seen, agrees: false, words: "A seal is on record; none was found." };
  const agrees = isSameSeal(seen, recorded);
  const words = agrees ? `Seal ${seen}, as on record.` : `You read ${seen}. That is not what the record says.`;
  return { seen, agrees, words };
}

/** A seal number as typed twice: the two must be the same reading. */
export function judgeTyping(first: string, second: string): string | undefined {
  if (first.trim() === "") return "Write the new seal's number.";
  if (second.trim() === "") return "Read the number off the fitted seal once more and write it again.";
  return isSameSeal(first, second) ? undefined : `The two differ: ${first.trim()} and ${second.trim()}.`;
}
