import type { CautionId } from "#base";
import { hit, type LintHit } from "../lint/lint-fault.ts";
import { allSteps, itemNamed, modeNamed, stepNamed } from "../look-ups.ts";
import { badWords } from "../lint/lint-wording.ts";
import type { Pattern, Step } from "../pattern.ts";
import { MET, type AfterMet, type AfterUse, type CountedItem, type Met } from "./after-use.ts";
import { isCalledFor } from "./pattern-after.ts";

/** What first aid after each thing met must warn of; common practice. */
const CAUTIONS: Readonly<Partial<Record<Met, CautionId>>> = {
  sewage: "foul-water-exposure",
  fuel: "petrol-vapour",
};

/** Is everything a kit can meet answered, by steps that are there, with a flush that ends the clock? */
export function afterUseLint(pattern: Pattern): readonly LintHit[] {
  const { afterUse } = pattern;
  if (afterUse === undefined) return allSteps(pattern).flatMap((step) => straySteps(step, []));
  const answered = afterUse.met.map(({ what }) => what);
  return [
    ...unanswered(afterUse),
    ...afterUse.met.flatMap((met) => metHits(pattern, met)),
    ...afterUse.counted.flatMap((counted) => countedHits(pattern, counted)),
    ...allSteps(pattern).flatMap((step) => straySteps(step, answered)),
  ];
}

function unanswered({ met }: AfterUse): readonly LintHit[] {
  return MET.filter((what) => !met.some((one) => one.what === what)).map((what) => ({
    rule: "met-unanswered",
    where: "afterUse",
    what: `Nothing says what to do with a kit that met ${what}.`,
    remedy: "Add it to `met`, with the time to the first flush, first aid and the flush.",
  }));
}

function metHits(pattern: Pattern, { what, cautions, firstAid, flushedBy }: AfterMet): readonly LintHit[] {
  const caution = CAUTIONS[what];
  const isWarned = caution === undefined || cautions.includes(caution);
  const warned: LintHit = {
    rule: "hazard-without-caution",
    where: `afterUse ${what}`,
    what: `Its first aid does not warn of ${String(caution)}.`,
    remedy: "Name that caution in its `cautions`.",
  };
  const words = firstAid.flatMap(badWords).map((bad): LintHit => ({ ...bad, where: `afterUse ${what}` }));
  return [...(isWarned ? [] : [warned]), ...words, ...flushedBy.flatMap((id) => flushHits(pattern, what, id))];
}

/** A flush that is left out, or not called for after this, would never end the clock. */
function flushHits(pattern: Pattern, what: Met, id: string): readonly LintHit[] {
  const step = stepNamed(pattern, id);
  if (step === undefined || (!step.optional && isCalledFor(step, [what]))) return [];
  const told = {
    what: `It is the first flush after ${what}, and may be left out then.`,
    remedy: `Make it a step that a turnaround after ${what} must answer.`,
  };
  return [hit("flush-left-out", { what: "step", id }, told)];
}

function countedHits(pattern: Pattern, { item, missing }: CountedItem): readonly LintHit[] {
  const name = itemNamed(pattern, item)?.name ?? item;
  const mode = modeNamed(pattern, missing);
  if (mode === undefined || mode.item === item) return [];
  const told = {
    what: `It is counted when the kit comes back, and "${mode.name}" is not one of its own ways to fail.`,
    remedy: `Name a mode of ${name} that says it is missing.`,
  };
  return [hit("counted-without-mode", { what: "item", id: item }, told)];
}

/** A step kept for something of which the pattern does not speak is never called for knowingly. */
function straySteps({ id, after }: Step, answered: readonly Met[]): readonly LintHit[] {
  return (after ?? [])
    .filter((what) => !answered.includes(what))
    .map((what) => {
      const told = {
        what: `It is for a kit that met ${what}, of which \`afterUse\` says nothing.`,
        remedy: "Say it there.",
      };
      return hit("step-after-unknown", { what: "step", id }, told);
    });
}
