import { pictureFaults } from "./build-pictures.ts";
import { hit, type LintHit, type LintRule } from "../lint/lint-fault.ts";
import { allSteps } from "../look-ups.ts";
import type { Beside } from "../card/build-card.ts";
import type { Pattern } from "../pattern.ts";
import { PICTURES_FILE, type LineDrawing, type Pictures, type Pointer } from "./pictures.ts";

/**
 * Does every line that points at a drawing find it, and does every drawing say what is to be seen in it?
 *
 * @param beside - the files that stand beside the pattern's; without it drawings already read are taken as they are
 */
export function pictureLint(pattern: Pattern, beside?: Beside): readonly LintHit[] {
  const unread = beside === undefined ? [] : unreadHits(pattern, beside);
  const { pictures } = pattern;
  if (pictures === undefined) return unread;
  return [
    ...unread,
    ...pictures.drawings.flatMap((one) => drawingHits(one, pictures)),
    ...pointersOf(pattern, pictures).flatMap((one) => pointerHits(one, pictures)),
    ...layerHits(pattern, pictures),
  ];
}

function unreadHits(pattern: Pattern, beside: Beside): readonly LintHit[] {
  return pictureFaults(pattern, beside).map(({ drawing, wrong }) => ({
    rule: "drawing-unread",
    where: drawing === undefined ? PICTURES_FILE : `drawing ${drawing}`,
    what: `It cannot be shown: ${wrong}.`,
    remedy: "Mend what is named, or take the drawing out of the list.",
  }));
}

function drawingHits(one: LineDrawing, pictures: Pictures): readonly LintHit[] {
  const shown = [...Object.values(pictures.steps), ...Object.values(pictures.checks)];
  const told = (rule: LintRule, what: string, remedy: string): LintHit => ({
    rule,
    where: `drawing ${one.id}`,
    what,
    remedy,
  });
  return [
    ...(shown.some(({ drawing }) => drawing === one.id)
      ? []
      : [told("drawing-never-shown", "No line points at it.", "Point a step or a check at it, or take it out.")]),
    ...(one.drawing?.title === ""
      ? [told("drawing-untitled", "It has no title.", "Say in <title> what is to be seen; people hear it read.")]
      : []),
    ...partsDrawn(one)
      .filter((part) => one.parts[part] === undefined)
      .map((part) =>
        told(
          "drawing-part-unnamed",
          `Its part ${part} has no name.`,
          `Name it in words, under parts in ${PICTURES_FILE}.`,
        ),
      ),
  ];
}

interface Pointing {
  readonly what: "step" | "check";
  readonly id: string;
  readonly isKnown: boolean;
  readonly pointer: Pointer;
}

function pointersOf(pattern: Pattern, { steps, checks }: Pictures): readonly Pointing[] {
  const known = {
    step: new Set(allSteps(pattern).map(({ id }) => id)),
    check: new Set(pattern.checks.map(({ id }) => id)),
  };
  const listed = (what: Pointing["what"], given: Pictures["steps"]) =>
    Object.entries(given).map(([id, pointer]) => ({ what, id, isKnown: known[what].has(id), pointer }));
  return [...listed("step", steps), ...listed("check", checks)];
}

function pointerHits({ what, id, isKnown, pointer }: Pointing, { drawings }: Pictures): readonly LintHit[] {
  const of = { what, id } as const;
  if (!isKnown) {
    const where = `${what} ${id}`;
    return [{ rule: "shown-line-unknown", where, what: `There is no ${what} ${id}.`, remedy: "Correct the id." }];
  }
  const found = drawings.find((one) => one.id === pointer.drawing);
  if (found === undefined) {
    const told = {
      what: `It points at the drawing ${pointer.drawing}, which is not listed.`,
      remedy: "Correct the id.",
    };
    return [hit("shown-drawing-unknown", of, told)];
  }
  if (found.drawing === undefined) return [];
  const missing = pointer.parts.filter((part) => !partsDrawn(found).includes(part));
  return missing.map((part) =>
    hit("shown-part-unknown", of, {
      what: `It points at ${part}, which ${found.id} does not show.`,
      remedy: `Name a part of it: ${partsDrawn(found).join(", ")}.`,
    }),
  );
}

/** Where a kit is drawn at all, whoever packs it wants to see the layer. */
function layerHits(pattern: Pattern, pictures: Pictures): readonly LintHit[] {
  const stowing = pattern.stages.filter(({ id }) => id === "restow").flatMap(({ steps }) => steps);
  const bare = stowing.filter(({ id, stows }) => stows.length > 0 && !isLayer(pictures, pictures.steps[id]?.drawing));
  const told = { what: "It stows something and shows no layer.", remedy: "Point it at a drawing with layer: true." };
  return bare.map(({ id }) => ({ ...hit("restow-without-layer", { what: "step", id }, told), isNote: true }));
}

function isLayer({ drawings }: Pictures, id: string | undefined): boolean {
  return drawings.some((one) => one.id === id && one.layer);
}

function partsDrawn({ drawing }: LineDrawing): readonly string[] {
  return [...new Set((drawing?.shapes ?? []).flatMap(({ part }) => part ?? []))];
}
