import type { Words } from "#words";
import type { StandingInWords } from "#readiness";

/** What to know of a kit before it goes across, in one line: why it is grounded, or to what it is limited. */
export function sayKitDoubt(standing: StandingInWords | undefined, words: Words["sheetPumps"]): string | undefined {
  const first = standing?.because[0]?.text;
  if (standing?.standing === "grounded") return words.isGrounded({ reason: first ?? "" });
  if (standing?.standing === "ready-with-limits") return words.isLimited({ limit: standing.limits[0] ?? first ?? "" });
  return undefined;
}
