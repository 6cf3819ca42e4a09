import { stepForDate, type Item, type Pattern, type Step } from "#kit";
import { sealNumbersOf } from "./seal-fold.ts";
import { isGrounding, openFindings } from "../findings/finding-list.ts";
import { datesUnknown, lineKeys } from "./life.ts";
import { lookUp, nameOfItem, nameOfMode, stepsForItem, type Lookup, type PlacedStep } from "../lookup.ts";
import { lineToSay, wrongWithoutFinding } from "../findings/loose-ends.ts";
import { drillRefusals } from "../drill/drill-refusals.ts";
import { refusal, type Refusal } from "./refusal.ts";
import { clockRun, isToMeasure, stepGate } from "../judging/index.ts";
import { isSameSeal } from "./seal-number.ts";
import type { KitState, Turnaround } from "../state.ts";

/** What a sealing is judged by. */
export interface Sealing {
  readonly kit: KitState;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
  /** Every kit of the station, this one among them: no seal number is used twice. */
  readonly allKits: readonly KitState[];
  /** The new seal's number; absent while it has not been read, to see what else stands in the way. */
  readonly seal?: string;
}

/**
 * Why a turnaround may not be closed with a seal yet; empty where it may. It can always be closed as grounded.
 *
 * Refused while a drill is on or left something to be done, a finding grounds, a line is unanswered or says wrong without a finding, an item has not been put back,
 * what is used once has not been renewed, a wait or run has not gone its time, two devices differ, or the seal number
 * is no number or was ever used before.
 */
export function sealingRefusals(sealing: Sealing): readonly Refusal[] {
  const lookup = lookUp(sealing.pattern, sealing.turnaround);
  return [
    ...drillRefusals(sealing.kit, sealing.turnaround, lookup),
    ...openGrounds(sealing, lookup),
    ...unanswered(sealing.turnaround, lookup),
    ...wrongs(sealing, lookup),
    ...unaccounted(sealing, lookup),
    ...notRenewed(sealing, lookup),
    ...datesToRead(sealing),
    ...notRun(sealing, lookup),
    ...notMeasured(sealing, lookup),
    ...sealing.kit.toSettle.map((one) => refusal("to-settle", { say: "settleFirst", of: { about: one.about } })),
    ...(sealing.seal === undefined ? [] : sealRefusals(sealing, sealing.seal)),
  ];
}

function openGrounds(sealing: Sealing, lookup: Lookup): readonly Refusal[] {
  return openFindings(sealing.kit)
    .filter((finding) => isGrounding(finding))
    .map((finding) => ({
      ...refusal("finding", { say: "openFinding", of: { name: nameOfMode(lookup, finding.item, finding.mode) } }),
      item: finding.item,
      finding: finding.id,
    }));
}

function unanswered(turnaround: Turnaround, lookup: Lookup): readonly Refusal[] {
  return required(lookup, turnaround).flatMap((step) =>
    lineKeys(step)
      .filter((key) => !turnaround.answers[key])
      .map((key) => checkOf(step, key))
      .map((check) => ({
        ...refusal("turnaround", { say: "notAnswered", of: { line: lineToSay(lookup, step, check) } }),
        step: step.id,
        ...(check !== undefined && { check }),
      })),
  );
}

function wrongs({ kit, turnaround }: Sealing, lookup: Lookup): readonly Refusal[] {
  return wrongWithoutFinding(kit, turnaround, lookup).map((loose) => ({
    ...refusal("finding", { say: "foundWrong", of: { line: loose.line } }),
    ...loose.about,
    step: loose.step,
    ...(loose.check !== undefined && { check: loose.check }),
  }));
}

/** Every item that some step puts back must have been put back, or be the subject of an open finding. */
function unaccounted({ kit, turnaround }: Sealing, lookup: Lookup): readonly Refusal[] {
  const stowing = [...lookup.steps.values()].filter((step) => step.stows.length > 0);
  const found = new Set(openFindings(kit).map((finding) => finding.item));
  const back = new Set(stowing.filter((step) => isDone(turnaround, step)).flatMap((step) => step.stows));
  const items = new Set(stowing.flatMap((step) => step.stows));
  return [...items]
    .filter((item) => !back.has(item) && !found.has(item))
    .map((item) => ({
      ...refusal("turnaround", { say: "notPutBack", of: { item: nameOfItem(lookup, item) } }),
      item,
      ...at(lookup, item),
    }));
}

function notRenewed({ kit, turnaround }: Sealing, lookup: Lookup): readonly Refusal[] {
  const isRenewed = (item: Item) => kit.contents[item.id]?.turnaround === turnaround.id;
  return lookup.pattern.items
    .filter((item) => item.life.kind === "single-use" && !isRenewed(item))
    .map((item) => ({
      ...refusal("single-use", { say: "notRenewed", of: { item: item.name } }),
      item: item.id,
      ...at(lookup, item.id),
    }));
}

/** Each thing that is in the hand at a line has its date read there, or is said to bear none that can be read. */
function datesToRead({ kit, pattern }: Sealing): readonly Refusal[] {
  return datesUnknown(kit, pattern).flatMap((item) => {
    const step = stepForDate(pattern, item);
    if (!step) return [];
    const said = { say: "dateNotRead", of: { item: item.name } } as const;
    return [{ ...refusal("date", said), item: item.id, step: step.id }];
  });
}

function notRun(sealing: Sealing, lookup: Lookup): readonly Refusal[] {
  const { turnaround } = sealing;
  return required(lookup, turnaround)
    .filter((step) => !stepGate(step, clockRun(sealing, step.id)).open && !isImpossible(turnaround, step))
    .map((step) => ({
      ...refusal("turnaround", { say: "notRun", of: { line: lineToSay(lookup, step, undefined) } }),
      step: step.id,
    }));
}

/** What stands on a paper card was worked out there. */
function isTypedOffCard(turnaround: Turnaround, step: Step): boolean {
  return Object.values(turnaround.answers).some((one) => one.step === step.id && one.fromCard === true);
}

/** A share that nobody measured proves nothing of the pump. */
function notMeasured(sealing: Sealing, lookup: Lookup): readonly Refusal[] {
  const { turnaround } = sealing;
  return required(lookup, turnaround)
    .filter((step) => isAnsweredSeen(turnaround, step) && isToMeasure(sealing, step.id))
    .filter((step) => !isTypedOffCard(turnaround, step))
    .map((step) => ({
      ...refusal("turnaround", { say: "notMeasured", of: { line: lineToSay(lookup, step, undefined) } }),
      step: step.id,
    }));
}

function isAnsweredSeen(turnaround: Turnaround, step: Step): boolean {
  return lineKeys(step).some((key) => turnaround.answers[key]?.answer === "seen");
}

function sealRefusals({ allKits, kit }: Sealing, seal: string): readonly Refusal[] {
  if (seal.trim() === "") return [refusal("seal", { say: "readSeal" })];
  return allKits.flatMap((other) => {
    if (other.seal && isSameSeal(other.seal.number, seal)) {
      if (other.id === kit.id) return [refusal("seal", { say: "sealOnThis", of: { seal } })];
      return [refusal("seal", { say: "sealOn", of: { seal, kit: other.name } })];
    }
    const used = sealNumbersOf(other).some((number) => isSameSeal(number, seal));
    return used ? [refusal("seal", { say: "sealUsed", of: { seal, kit: other.name } })] : [];
  });
}

/** Steps that must be answered: all but the optional ones that nobody began. */
function required(lookup: Lookup, turnaround: Turnaround): readonly PlacedStep[] {
  return [...lookup.steps.values()].filter(
    (step) => !step.optional || lineKeys(step).some((key) => turnaround.answers[key]),
  );
}

function isDone(turnaround: Turnaround, step: Step): boolean {
  return lineKeys(step).every((key) => turnaround.answers[key]?.answer === "seen");
}

function isImpossible(turnaround: Turnaround, step: Step): boolean {
  return lineKeys(step).some((key) => turnaround.answers[key]?.answer === "not-possible");
}

function checkOf(step: Step, key: string): string | undefined {
  return key === step.id ? undefined : key.slice(step.id.length + 1);
}

/** The step that renews or stows an item. */
function at(lookup: Lookup, item: string): Pick<Refusal, "step"> {
  const step = stepsForItem(lookup, item)[0];
  return step === undefined ? {} : { step };
}
