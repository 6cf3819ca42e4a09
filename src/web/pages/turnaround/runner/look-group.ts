import type { OpenKit } from "../../../kit-view/at-hand.ts";
import type { Ask, Line } from "../../../act/lines.ts";
import { measuredBefore } from "#readiness";
import { leadsTo, type Position } from "../../../act/position.ts";

/**
 * The open asks that one look shows together with this one, this one among them: as the pattern groups them, without
 * what is answered and without a measurement that still has to be made.
 *
 * @returns fewer than two where there is nothing to answer together
 */
export function seenTogether({ kit }: OpenKit, line: Line, ask: Ask): readonly Ask[] {
  const group = line.step.oneLook?.find((ids) => ask.check !== undefined && ids.includes(ask.check.id)) ?? [];
  return line.asks.filter(({ check, answered }) => {
    if (!check || answered || !group.includes(check.id)) return false;
    return check.kind !== "measure" || measuredBefore(kit, line.step.id, check) !== undefined;
  });
}

/** Where the answers of a whole group lead: what else is open at the line, then as any answer would. */
export function leadsOn(lines: readonly Line[], line: Line, group: readonly Ask[]): Position | undefined {
  const rest = line.asks.find((one) => !one.answered && !group.includes(one));
  if (rest) return { line: line.step.line, ask: rest.key };
  const [first] = group;
  const asIfOne = lines.map((one) => (one === line && first ? { ...one, asks: [first] } : one));
  return leadsTo(asIfOne, line.step.line, first?.key ?? "");
}
