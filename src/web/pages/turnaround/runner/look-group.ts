import { measuredBefore, recordedFor } from "#readiness";
import type { Ask, Line } from "#web/act/lines.ts";
import { oneTapOf, type Known, type OneTap } from "#web/act/one-tap.ts";
import { leadsTo, type Position } from "#web/act/position.ts";
import type { Words } from "#words";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

/**
 * The open asks that one look shows together with this one, this one among them: as the pattern groups them, without
 * what is answered and without a measurement or a number that still has to be read.
 *
 * @returns fewer than two where there is nothing to answer together
 */
export function seenTogether(open: OpenKit, line: Line, ask: Ask, words: Words["act"]): readonly Ask[] {
  const group = line.step.oneLook?.find((ids) => ask.check !== undefined && ids.includes(ask.check.id)) ?? [];
  return line.asks.filter(({ check, answered }) => {
    if (!check || answered || !group.includes(check.id)) return false;
    return check.kind === "look" || plainTap(open, line, { key: "", check }, words) !== undefined;
  });
}

/** The right answer at an ask where nothing is typed: what one tap stands for. */
export function plainTap(open: OpenKit, line: Line, { check }: Ask, words: Words["act"]): OneTap | undefined {
  return oneTapOf(check, {}, knownAt(open, line.step.id, check), words);
}

/** What the program knows at an ask beside what is typed there. */
export function knownAt({ kit, turnaround }: OpenKit, step: string, check: Ask["check"]): Known {
  const { sealSeen: openedSeal } = turnaround.opened;
  const earlier = Object.values(turnaround.answers).find(
    (one) => check !== undefined && one.check === check.id && one.step !== step && one.answer === "seen",
  )?.value;
  return {
    recorded: recordedFor(check, kit, turnaround),
    openedSeal,
    earlier,
    isMeasured: isMeasuredBefore({ kit }, step, check),
  };
}

/** True at a measurement that is made once and was: it is only looked at now. */
export function isMeasuredBefore({ kit }: Pick<OpenKit, "kit">, step: string, check: Ask["check"]): boolean {
  return check !== undefined && measuredBefore(kit, step, check) !== undefined;
}

/** True at a measurement that is made once, not answered yet, of which no reading is on record. */
export function isFirstMeasured({ kit }: OpenKit, step: string, { check, answered }: Ask): boolean {
  if (check?.kind !== "measure" || check.once !== true || answered) return false;
  return measuredBefore(kit, step, check) === undefined;
}

/** Where the answers of a whole group lead: what else is open at the line, then as any answer would. */
export function leadsOn(lines: readonly Line[], line: Line, group: readonly Ask[]): Position | undefined {
  const rest = line.asks.find((one) => !one.answered && !group.includes(one));
  if (rest) return { line: line.step.line, ask: rest.key };
  const [first] = group;
  const asIfOne = lines.map((one) => (one === line && first ? { ...one, asks: [first] } : one));
  return leadsTo(asIfOne, line.step.line, first?.key ?? "");
}
