import type { CasualtyOutcome } from "#readiness";

/** How a casualty ended, in words. */
export const OUTCOMES: Readonly<Record<CasualtyOutcome, string>> = {
  afloat: "afloat, left with her crew",
  "towed-in": "towed in",
  beached: "beached or lifted out",
  lost: "lost",
  "stood-down": "stood down",
};
