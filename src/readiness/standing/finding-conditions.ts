import { addDays, formatDate, parseDate } from "#base";
import type { Effect } from "#kit";
import type { Condition, Restoring } from "./condition.ts";
import { nameOfMode, stepsForChecks, type Lookup } from "../lookup.ts";
import { isRemedied, provingChecks } from "../findings/finding-list.ts";
import type { Finding, KitState, Turnaround } from "../state.ts";
import { lastClosed } from "../kit/life.ts";
import { wrongWithoutFinding } from "../findings/loose-ends.ts";

/** What open findings, and answers that should have raised one, do to a kit. */
export function findingConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const open = kit.findings.filter((finding) => finding.closed === undefined);
  const closed = lastClosed(kit);
  const loose = closed === undefined || kit.turnaround ? [] : looseConditions(kit, closed, lookup);
  return [...open.flatMap((finding) => conditionsOfFinding(finding, lookup)), ...loose];
}

function conditionsOfFinding(finding: Finding, lookup: Lookup): readonly Condition[] {
  const { livedWith } = finding;
  if (!livedWith) return [ofEffect(finding, lookup)];
  const ends = addDays(parseDate(livedWith.until), 1);
  const name = nameOfMode(lookup, finding.item, finding.mode);
  const until = formatDate(parseDate(livedWith.until));
  const text = `Lived with until ${until} by ${livedWith.name}: ${name}.`;
  const limited: Condition = {
    bears: "limits",
    limit: livedWith.limit,
    reason: { rule: "finding", text, item: finding.item, finding: finding.id },
    until: ends,
    restore: restoreFinding(finding, lookup),
  };
  return [limited, pastItsDate(finding, lookup, ends)];
}

function pastItsDate(finding: Finding, lookup: Lookup, from: string): Condition {
  const condition = ofEffect(finding, lookup);
  const name = nameOfMode(lookup, finding.item, finding.mode);
  const text = `Lived with only until ${formatDate(addDays(from, -1))}: ${name}.`;
  const reason = { ...condition.reason, text };
  const ends = `living with ${name} ends`;
  return { ...condition, bears: "limits", limit: text, reason, from, ends };
}

function ofEffect(finding: Finding, lookup: Lookup): Condition {
  const name = nameOfMode(lookup, finding.item, finding.mode);
  const limit = finding.limit ?? lookup.modes.get(finding.mode)?.limit ?? name;
  const mended = isRemedied(finding) ? " (remedy not yet proved)" : "";
  return {
    bears: finding.effect,
    ...(finding.effect === "limits" ? { limit } : {}),
    reason: { rule: "finding", text: `${name}${mended}.`, item: finding.item, finding: finding.id },
    restore: restoreFinding(finding, lookup),
  };
}

function restoreFinding(finding: Finding, lookup: Lookup): Restoring {
  const checks = provingChecks(finding, lookup.pattern);
  const advice = lookup.modes.get(finding.mode)?.remedy;
  const name = nameOfMode(lookup, finding.item, finding.mode);
  const what = advice === undefined ? `Mend ${name} and prove it.` : `${name}: ${advice}`;
  return {
    what,
    steps: stepsForChecks(
      lookup,
      checks.map((check) => check.id),
    ),
    opens: true,
  };
}

/** A line answered wrong with no finding raised counts as the worst that its check can find. */
function looseConditions(kit: KitState, turnaround: Turnaround, lookup: Lookup): readonly Condition[] {
  return wrongWithoutFinding(kit, turnaround, lookup).map((loose) => ({
    bears: loose.effect satisfies Effect,
    ...(loose.effect === "limits" ? { limit: loose.text } : {}),
    reason: { rule: "finding", text: `Found wrong, and no finding raised: ${loose.text}`, ...loose.about },
    restore: { what: `Raise a finding, or answer again: ${loose.text}`, steps: [loose.step], opens: true },
  }));
}
