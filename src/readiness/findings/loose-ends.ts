import { gravestEffect, type Effect } from "#kit";
import type { Saying } from "#words";
import { lineKeys } from "../kit/life.ts";
import type { Lookup, PlacedStep } from "../lookup.ts";
import type { KitState, Turnaround } from "../state.ts";

/** A line of a turnaround that says something is wrong, with no finding to carry it on. */
export interface LooseEnd {
  readonly step: string;
  readonly check?: string;
  readonly effect: Effect;
  readonly line: LineSaying;
  readonly about: { readonly item?: string };
}

/** A line, as a reason or a refusal names it. */
export type LineSaying =
  | { readonly say: "line"; readonly of: { readonly line: number; readonly asks: string } }
  | { readonly say: "step"; readonly of: { readonly step: string } }
  | { readonly say: "lowDelivery"; readonly of: { readonly line: LineSaying; readonly share: number } };

/**
 * Lines answered wrong, and deliveries measured too low, for which no finding was raised: of the turnaround, and of
 * those set aside for it.
 */
export function wrongWithoutFinding(kit: KitState, turnaround: Turnaround, lookup: Lookup): readonly LooseEnd[] {
  return [turnaround, ...setAsideBeside(kit, turnaround)].flatMap((one) => {
    const raisedIn = new Set([turnaround.id, one.id]);
    return [...wrongLines(kit, one, raisedIn, lookup), ...lowDeliveries(kit, one, raisedIn, lookup)];
  });
}

/**
 * The turnarounds set aside since the last one that was closed before this: what they found wrong still counts against
 * the one that stood.
 */
function setAsideBeside(kit: KitState, turnaround: Turnaround): readonly Turnaround[] {
  const before = kit.turnarounds.findLast((one) => one.closed?.how !== "set-aside" && one.id !== turnaround.id);
  const since = before?.closed === undefined ? -Infinity : Date.parse(before.closed.at);
  return kit.turnarounds.filter(
    (one) => one.closed?.how === "set-aside" && Date.parse(one.opened.at) >= since && one.id !== turnaround.id,
  );
}

/** Lines that could not be answered, with why. */
export function unexaminedLines(turnaround: Turnaround, lookup: Lookup): readonly Saying<"standing">[] {
  return [...lookup.steps.values()].flatMap((step) =>
    lineKeys(step).flatMap((key) => {
      const answer = turnaround.answers[key];
      if (answer?.answer !== "not-possible") return [];
      const line = lineToSay(lookup, step, answer.check);
      return [{ say: "lineWhy", of: { line, why: answer.why ?? { say: "noReason" } } }];
    }),
  );
}

/** A line by its number and what it asks: its check's own words, or the step's. */
export function lineToSay(lookup: Lookup, step: PlacedStep, check: string | undefined): LineSaying {
  const asked = check === undefined ? undefined : lookup.checks.get(check)?.ask;
  return { say: "line", of: { line: step.line, asks: withoutStop(asked ?? step.text) } };
}

function wrongLines(
  kit: KitState,
  turnaround: Turnaround,
  raisedIn: ReadonlySet<string>,
  lookup: Lookup,
): readonly LooseEnd[] {
  return Object.values(turnaround.answers).flatMap((answer) => {
    const { step: id, check: checkId } = answer;
    if (answer.answer !== "wrong" || hasFinding(kit, raisedIn, id, checkId)) return [];
    const step = lookup.steps.get(id);
    const check = checkId === undefined ? undefined : lookup.checks.get(checkId);
    const said = step ? lineToSay(lookup, step, checkId) : unknownLine(id);
    const about = check ? { item: check.item } : {};
    const line = checkId === undefined ? { step: id } : { step: id, check: checkId };
    return [{ ...line, effect: worstEffect(check?.finds ?? [], lookup), line: said, about }];
  });
}

function lowDeliveries(
  kit: KitState,
  turnaround: Turnaround,
  raisedIn: ReadonlySet<string>,
  lookup: Lookup,
): readonly LooseEnd[] {
  const last = turnaround.measured.at(-1);
  if (last?.verdict !== "grounds" || hasFinding(kit, raisedIn, last.step, undefined)) return [];
  const step = lookup.steps.get(last.step);
  const line = step ? lineToSay(lookup, step, undefined) : unknownLine(last.step);
  const said = { say: "lowDelivery", of: { line, share: Math.round(last.ratio * 100) } } as const;
  return [{ step: last.step, effect: "grounds", line: said, about: {} }];
}

function unknownLine(step: string): LineSaying {
  return { say: "step", of: { step } };
}

/** A finding raised at this line in one of these turnarounds; for a line without check, at any check of its step. */
function hasFinding(kit: KitState, raisedIn: ReadonlySet<string>, step: string, check: string | undefined): boolean {
  return kit.findings.some(
    (finding) =>
      raisedIn.has(finding.turnaround ?? "") &&
      finding.step === step &&
      (check === undefined || finding.check === undefined || finding.check === check),
  );
}

/** The gravest of the modes; of a line whose modes are not known, "grounds". */
function worstEffect(modes: readonly string[], { modes: known }: Lookup): Effect {
  return gravestEffect(modes.flatMap((mode) => known.get(mode)?.effect ?? [])) ?? "grounds";
}

function withoutStop(text: string): string {
  return text.replace(/[.\s]+$/, "");
}
