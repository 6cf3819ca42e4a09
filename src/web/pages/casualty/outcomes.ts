import type { CasualtyOutcome } from "#readiness";
import type { Words } from "#words";

const OUTCOMES = {
  afloat: "afloat",
  "towed-in": "towedIn",
  beached: "beached",
  lost: "lost",
  "stood-down": "stoodDown",
} as const satisfies Readonly<Record<CasualtyOutcome, keyof Words["casualtyTold"]>>;

/** How a casualty ended, in words. */
export function sayOutcome(outcome: CasualtyOutcome, words: Words["casualtyTold"]): string {
  return words[OUTCOMES[outcome]]();
}

/** Ways a casualty can end, to choose from. */
export function outcomeOptions(words: Words["casualtyTold"]) {
  return (Object.keys(OUTCOMES) as CasualtyOutcome[]).map((id) => ({ id, words: sayOutcome(id, words) }));
}
