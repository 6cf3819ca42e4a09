import { barsAt } from "#readiness";
import { openAsk, type Line } from "#web/act/lines.ts";
import { leadsTo, type Position } from "#web/act/position.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { itemToRead } from "../answer/dates-at-line.tsx";
import { isPlainlyRenewed } from "../answer/renewals.ts";

/**
 * The lines that are done in one go and confirmed together from this one on: as the pattern links them, up to the first
 * that is answered, held by a finding, or has a date to be read or a part to be chosen.
 *
 * @returns this line alone where it goes with no other
 */
export function doneTogether(open: OpenKit, lines: readonly Line[], line: Line): readonly Line[] {
  const from = lines.slice(lines.indexOf(line));
  const linked = from.findIndex(({ step }) => !step.withNext);
  const run = from.slice(0, linked + 1);
  const end = run.findIndex((one) => !isPlain(open, one));
  const group = end === -1 ? run : run.slice(0, end);
  return group.length === 0 ? [line] : group;
}

function isPlain(open: OpenKit, line: Line): boolean {
  const { step } = line;
  if (!openAsk(line) || step.checks.length > 0 || step.timer || step.measuresDelivery) return false;
  return barsAt(open, step.id).length === 0 && !itemToRead(open, step) && isPlainlyRenewed(open, step);
}

/** Where the answers of all of them lead: as the last one's would with the others given. */
export function leadsPast(lines: readonly Line[], group: readonly Line[]): Position | undefined {
  const last = group.at(-1)!;
  const rest = lines.filter((line) => line === last || !group.includes(line));
  return leadsTo(rest, last.step.line, last.step.id);
}

/** Lines done together as one: every caution and all that is wanted at hand, before the first of them begins. */
export function asOne(group: readonly Line[]): Line {
  const [first] = group;
  const steps = group.map(({ step }) => step);
  const needs = {
    people: Math.max(...steps.map((step) => step.needs.people)),
    minutes: steps.reduce((sum, step) => sum + step.needs.minutes, 0),
    tools: [...new Set(steps.flatMap((step) => step.needs.tools))],
  };
  const cautions = [...new Set(steps.flatMap((step) => step.cautions))];
  return { ...first!, step: { ...first!.step, cautions, needs } };
}
