import { patternKey } from "#kit";
import { reportStep, type Act, type ActContext, type CheckChance } from "#station";
import type { Bodies } from "#readiness";

/** What somebody says of a line at which planted faults were missed. */
export type MissedWhat = Bodies["step-reported"]["what"];

/** A check, and how often drills showed that it found what it can find. */
type Missed = Pick<CheckChance, "pattern" | "check" | "found" | "planted">;

/** What drills showed of the line: of one wording whatever the language, as it is held against what was reported before. */
export function missedNote({ check, found, planted }: Missed): string {
  return `Drills: found ${found} of ${planted} planted faults. ${check.ask}`;
}

/** Tells the pattern's owner of the line, as it was chosen, with what drills showed of it. */
export function reportMissed(doing: ActContext, one: Missed, what: MissedWhat): Act<"step-reported"> {
  const { pattern, check } = one;
  const step = pattern.stages.flatMap(({ steps }) => steps).find(({ checks }) => checks.includes(check.id))?.id ?? "";
  return reportStep(doing, patternKey(pattern), { step, what, note: missedNote(one) });
}
