import { findCaution } from "#base";
import { drawingFault, type Beside } from "./build-card.ts";
import { CARD_LANGUAGES, CARD_PARTS, type CardCaution, type CardStep, type StrangerCard } from "./card.ts";
import { hit, type LintHit, type LintRule } from "../lint/lint-fault.ts";
import type { Pattern, StageId } from "../pattern.ts";

/** Stages in which a stranger works with the kit, too. */
const STRANGERS_STAGES: readonly StageId[] = ["rig", "prime", "run"];
const PROMISE = /\b(un)?safe(ly|ty)?\b/i;

/**
 * Can somebody who has never seen the kit, and may read no English, make it pump and stop it again?
 *
 * @param beside - the files that stand beside the pattern's; without it drawings already read are taken as they are
 */
export function cardLint(pattern: Pattern, beside?: Beside): readonly LintHit[] {
  const { stranger } = pattern;
  if (stranger === undefined) return [noCard()];
  return [
    ...partHits(stranger),
    ...cautionHits(pattern, stranger),
    ...stranger.steps.flatMap((step) => stepHits(pattern, step, beside)),
  ];
}

function noCard(): LintHit {
  const remedy = "Add the part `stranger`: its pictures, how to stop, and what to do when no water comes.";
  return { rule: "card-missing", where: "stranger", what: "There is no card for a stranger.", remedy };
}

function partHits({ steps }: StrangerCard): readonly LintHit[] {
  const missing = CARD_PARTS.filter((part) => !steps.some((step) => step.part === part));
  return missing.map((part) => ({
    rule: "card-part-missing",
    where: "stranger",
    what: `Nothing on the card is of part ${part}.`,
    remedy: `Add steps of part ${part}.`,
  }));
}

/** Each DANGER that rig, prime or run of the pattern warns of stands on the card. */
function cautionHits(pattern: Pattern, { steps }: StrangerCard): readonly LintHit[] {
  const stages = pattern.stages.filter(({ id }) => STRANGERS_STAGES.includes(id));
  const shown = new Set(stages.flatMap((stage) => stage.steps.flatMap((step) => step.cautions)));
  const dangers = [...shown].filter((id) => findCaution(id)?.signal === "DANGER");
  const missing = dangers.filter((id) => !steps.some((step) => step.cautions.includes(id as CardCaution)));
  return missing.map((id) => ({
    rule: "card-caution-missing",
    where: "stranger",
    what: `The turnaround warns of ${findCaution(id)?.hazard.toLowerCase()}, the card does not.`,
    remedy: `Add the caution ${id} to the step where it can happen.`,
  }));
}

function stepHits(pattern: Pattern, step: CardStep, beside: Beside | undefined): readonly LintHit[] {
  return [...drawingHits(step, beside), ...languageHits(step), ...namedPartHits(pattern, step), ...wordHits(step)];
}

function drawingHits(step: CardStep, beside: Beside | undefined): readonly LintHit[] {
  const bare = step.file === undefined ? "no drawing is named" : undefined;
  const wrong = beside === undefined ? bare : drawingFault(step, beside);
  const remedy = "Draw it, name it under `drawing`, and put the SVG beside the pattern.";
  return wrong === undefined ? [] : [of("card-undrawn", step, `It has no drawing: ${wrong}.`, remedy)];
}

function languageHits(step: CardStep): readonly LintHit[] {
  const missing = CARD_LANGUAGES.filter((language) => step.words[language] === undefined);
  if (missing.length === 0) return [];
  return [of("card-untranslated", step, `It has no words in ${missing.join(", ")}.`, "Have it translated.")];
}

function namedPartHits({ items }: Pattern, step: CardStep): readonly LintHit[] {
  const parts = new Set(step.drawing?.shapes.flatMap(({ part }) => (part === undefined ? [] : [part])));
  const unknown = [...parts].filter((part) => !items.some(({ id }) => id === part));
  const remedy = "Name an item of this pattern in data-part.";
  return unknown.map((part) => of("card-part-unknown", step, `Its drawing names ${part}, which is no item.`, remedy));
}

function wordHits(step: CardStep): readonly LintHit[] {
  const remedy = "Say what is seen or done; nobody can promise that.";
  const promises = PROMISE.test(step.words.en ?? "");
  return promises ? [of("promises-safety", step, "It says that something is safe.", remedy)] : [];
}

function of(rule: LintRule, { id }: CardStep, what: string, remedy: string): LintHit {
  return hit(rule, { what: "card", id }, { what, remedy });
}
