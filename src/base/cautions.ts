import type { Caution, CautionId, SignalWord } from "./caution.ts";
import { CAUTIONS } from "./caution-words.ts";
import { assert } from "./errors.ts";

export type { Caution, CautionId, SignalWord } from "./caution.ts";

/**
 * What each signal word says of a hazard, gravest first. DANGER is kept for the most extreme situations; NOTICE never
 * stands for a hazard to a person.
 *
 * @source ANSI Z535.4-2007, 4.14.1 to 4.14.4, as quoted by a sign maker's standards page
 *   (safetylabel.com, "ANSI Z535.4 signal words"); ISO 3864-2 uses the first three in the same sense.
 *   The standards themselves were not in hand.
 */
export const SIGNAL_WORDS: Readonly<Record<SignalWord, string>> = {
  DANGER: "A hazardous situation which, if not avoided, will result in death or serious injury.",
  WARNING: "A hazardous situation which, if not avoided, could result in death or serious injury.",
  CAUTION: "A hazardous situation which, if not avoided, could result in minor or moderate injury.",
  NOTICE: "Practices not related to personal injury.",
};

const BY_ID: ReadonlyMap<string, Caution> = new Map(CAUTIONS.map((one) => [one.id, one]));

/** Every caution, gravest first. */
export function allCautions(): readonly Caution[] {
  return CAUTIONS;
}

/** True where the text is the id of a caution. */
export function isCautionId(text: string): text is CautionId {
  return BY_ID.has(text);
}

/** The caution of this id. */
export function cautionNamed(id: CautionId): Caution {
  const found = BY_ID.get(id);
  assert(found, `no caution ${id}`);
  return found;
}

/** Finds a caution by a text that may not be one, such as a pattern's. */
export function findCaution(id: string): Caution | undefined {
  return BY_ID.get(id);
}

/** The same cautions by their signal words, gravest first; those of one word in the order given, unknown ids last. */
export function gravestFirst<Id extends string>(ids: readonly Id[]): readonly Id[] {
  const words = Object.keys(SIGNAL_WORDS);
  const rank = (id: Id): number => words.indexOf(findCaution(id)?.signal ?? "NOTICE");
  return ids.toSorted((one, other) => rank(one) - rank(other));
}
