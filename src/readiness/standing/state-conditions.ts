import { formatDate, sayCount } from "#base";
import { patternKey, type Pattern } from "#kit";
import { metIn, sayLent, sayLentOut, sayMet } from "../after-use/index.ts";
import { drillConditions } from "../drill/drill-conditions.ts";
import type { Condition } from "./condition.ts";
import { isEnrolled } from "../kit/kit-fold.ts";
import { lastClosed, lastSealed } from "../kit/life.ts";
import { unexaminedLines } from "../findings/loose-ends.ts";
import type { Lookup } from "../lookup.ts";
import type { KitState, Reason } from "../state.ts";
import { owedBetween } from "./owed-between.ts";

/** What custody, seal, open turnarounds, the pattern's version and unsettled differences do to a kit. */
export function stateConditions(kit: KitState, lookup: Lookup, versions: readonly Pattern[]): readonly Condition[] {
  return [
    ...chargeConditions(kit),
    ...drillConditions(kit, lookup),
    ...custodyConditions(kit, lookup),
    ...lentConditions(kit),
    ...turnaroundConditions(kit, lookup),
    ...sealConditions(kit, lookup),
    ...versionConditions(lookup, versions),
    ...owedConditions(kit, lookup, versions),
    ...settleConditions(kit),
  ];
}

function chargeConditions(kit: KitState): readonly Condition[] {
  if (kit.retired)
    return [{ bears: "grounds", reason: reason("retired", `Retired: ${asSentence(kit.retired.reason)}`) }];
  if (isEnrolled(kit)) return [];
  const restore = { what: "Enrol the kit.", steps: [], opens: false };
  return [{ bears: "grounds", reason: reason("custody", "Not yet enrolled."), restore }];
}

function custodyConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const { custody } = kit;
  if (custody.kind === "here") return [];
  const all = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
  if (custody.kind === "away") {
    const until = custody.back === undefined ? "" : `, expected back by ${formatDate(custody.back)}`;
    const text = `Handed over to ${custody.to}${until}.`;
    const restore = { what: "Get it back, then do a turnaround.", steps: all, opens: true };
    return [{ bears: "away", reason: reason("custody", text), restore }];
  }
  const restore = { what: "Do a turnaround.", steps: all, opens: true };
  const met = metIn(kit.met);
  const text = `Returned, and not yet turned round.${met.length > 0 ? ` It met ${sayMet(met)}.` : ""}`;
  return [{ bears: "grounds", reason: reason("custody", text), restore }];
}

/** What was lent with it and is still out: it bears on no standing, and somebody has to fetch it. */
function lentConditions({ lentOut = [] }: KitState): readonly Condition[] {
  return lentOut.map((lent) => ({
    bears: "notes",
    reason: reason("lent", `${sayLentOut(lent)}.`),
    restore: { what: `Fetch what was lent: ${sayLent(lent)}.`, steps: [], opens: false },
  }));
}

/** What somebody wrote, with the full stop it may lack. */
function asSentence(written: string): string {
  return written.replace(/\.?$/, ".");
}

function turnaroundConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  if (kit.turnaround) return [openCondition(kit.turnaround, lookup)];
  const last = lastClosed(kit);
  if (!last) return isEnrolled(kit) && kit.custody.kind === "here" ? [firstToDo(lookup)] : [];
  if (last.closed?.how === "grounded") {
    const text = `Closed as grounded: ${asSentence(last.closed.reason ?? "no reason given")}`;
    const all = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
    const restore = { what: "Do a turnaround.", steps: all, opens: true };
    return [{ bears: "grounds", reason: reason("turnaround", text), restore }];
  }
  return unexaminedLines(last, lookup).map((line) => unexamined(line));
}

/** Taken on charge, and not yet turned round here. */
function firstToDo(lookup: Lookup): Condition {
  const all = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
  const restore = { what: "Do the first turnaround.", steps: all, opens: true };
  return { bears: "grounds", reason: reason("turnaround", "New, first turnaround to do."), restore };
}

function openCondition(turnaround: NonNullable<KitState["turnaround"]>, lookup: Lookup): Condition {
  const answered = new Set(Object.values(turnaround.answers).map((answer) => answer.step));
  const left = [...lookup.steps.values()].filter((step) => !step.optional && !answered.has(step.id));
  const what = `Finish the turnaround: ${left.length} ${left.length === 1 ? "line" : "lines"} left.`;
  const restore = { what, steps: left.map((step) => step.id), opens: false };
  return { bears: "open", reason: reason("turnaround", "Open: a turnaround is under way."), restore };
}

function unexamined(line: string): Condition {
  const text = `Not examined: ${line}`;
  const restore = { what: `Examine what was not possible: ${line}`, steps: [], opens: true };
  return { bears: "limits", limit: text, reason: reason("unexamined", text), restore };
}

function sealConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const examine = [...lookup.steps.values()].filter((step) => step.stage === "examine" && !step.optional);
  const steps = examine.map((step) => step.id);
  const restore = { what: "Open it, count and examine everything, and seal it again.", steps, opens: true };
  const found: Condition[] = [];
  if (kit.sealMismatch) {
    const { expected, seen } = kit.sealMismatch;
    const text = `Seal ${seen === "" ? "missing" : `seen ${seen}`}, recorded ${expected}.`;
    found.push({ bears: "grounds", reason: reason("seal", text), restore });
  } else if (!kit.seal && !kit.turnaround) {
    found.push({ bears: "grounds", reason: reason("seal", "No seal on record."), restore });
  }
  if (kit.seal && kit.sealTwin !== undefined) {
    const text = `Seal ${kit.seal.number} is on record for ${kit.sealTwin} too.`;
    found.push({ bears: "grounds", reason: reason("seal", text), restore });
  }
  if (kit.unsound) found.push(unsound(kit.unsound, lookup));
  return found;
}

function unsound({ note }: { readonly note?: string }, lookup: Lookup): Condition {
  const text = note === undefined ? "Container not sound at a muster." : `Container not sound at a muster: ${note}`;
  const steps = [...lookup.steps.values()].filter((step) => step.stage === "examine" && !step.optional);
  const restore = { what: "Examine the container and what is in it.", steps: steps.map(({ id }) => id), opens: true };
  return { bears: "grounds", reason: reason("muster", text), restore };
}

function versionConditions({ pattern }: Lookup, versions: readonly Pattern[]): readonly Condition[] {
  const newest = Math.max(pattern.version, ...versions.filter(({ id }) => id === pattern.id).map((one) => one.version));
  if (newest === pattern.version) return [];
  const text = `Built to version ${pattern.version} of its pattern; version ${newest} is current.`;
  const restore = { what: `Rebuild it to version ${newest}.`, steps: [], opens: true };
  return [{ bears: "limits", limit: text, reason: reason("pattern", text), restore }];
}

/** Checks of the version it is built to that no sealed turnaround has made: a line that says so proves none of them. */
function owedConditions(kit: KitState, { pattern }: Lookup, versions: readonly Pattern[]): readonly Condition[] {
  const last = lastSealed(kit);
  const under = versions.find((one) => one.id === pattern.id && patternKey(one) === last?.pattern);
  const owed = under === undefined || under.version === pattern.version ? [] : owedBetween(under, pattern);
  if (under === undefined || owed.length === 0) return [];
  const made = `last turned round under version ${under.version}`;
  const text = `${sayCount(owed.length, "check")} of version ${pattern.version} not made yet: ${made}.`;
  const steps = [...new Set(owed.flatMap(({ step }) => step?.id ?? []))];
  const restore = { what: `Make what is new in version ${pattern.version}.`, steps, opens: true };
  return [{ bears: "limits", limit: text, reason: reason("pattern", text), restore }];
}

function settleConditions(kit: KitState): readonly Condition[] {
  return kit.toSettle.map((difference) => ({
    bears: "grounds",
    reason: reason("to-settle", `To settle: ${difference.about}`),
    restore: { what: `Settle: ${difference.about}`, steps: [], opens: false },
  }));
}

function reason(rule: Reason["rule"], text: string): Reason {
  return { rule, text };
}
