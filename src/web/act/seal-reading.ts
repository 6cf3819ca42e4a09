import { isSameSeal } from "#readiness";
import type { Words } from "#words";

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
 * @param words - to say it in
 */
export function compareSeal(seen: string, recorded: string | undefined, words: Words["act"]): SealComparison {
  return { seen, agrees: sealAgrees(seen, recorded), words: saySeal(seen, recorded, words) };
}

/** Whether the seal read is the one on record; where none is on record, nothing speaks against it. */
export function sealAgrees(seen: string, recorded: string | undefined): boolean {
  return recorded === undefined || (seen !== NO_SEAL && isSameSeal(seen, recorded));
}

function saySeal(seal: string, recorded: string | undefined, words: Words["act"]): string {
  if (recorded === undefined) return seal === NO_SEAL ? words.noSealNoneFound() : words.noSealOnRecord();
  if (seal === NO_SEAL) return words.sealNotFound();
  return sealAgrees(seal, recorded) ? words.sealAgrees({ seal }) : words.sealOther({ seal });
}

/** What is wrong with a seal number as typed twice: the two must be the same reading. */
export function judgeTyping(first: string, second: string, words: Words["act"]): string | undefined {
  if (first.trim() === "") return words.writeSeal();
  if (second.trim() === "") return words.writeSealAgain();
  return isSameSeal(first, second) ? undefined : words.sealsDiffer({ first: first.trim(), second: second.trim() });
}
