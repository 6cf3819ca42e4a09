export * from "./pattern.ts";
export { loadPattern, patternJsonSchema } from "./file/load-pattern.ts";
export * from "./look-ups.ts";
export { MET, type AfterMet, type AfterUse, type CountedItem, type Met } from "./after-use/after-use.ts";
export { cameUnsealed, isCalledFor, patternAfter, stepsAsked, type Begun } from "./after-use/pattern-after.ts";
export { lineLabel, linesOf, type PatternLine } from "./lines.ts";
export {
  CARD_CAUTIONS,
  CARD_LANGUAGES,
  CARD_PARTS,
  type CardCaution,
  type CardLanguage,
  type CardPart,
  type CardStep,
  type StrangerCard,
} from "./card/card.ts";
export {
  TROUBLE_SIGNS,
  type Trouble,
  type TroubleCause,
  type TroubleSign,
  type TroubleTry,
} from "./trouble/trouble.ts";
export { startCheckOf } from "./trouble/start-check.ts";
export { tryHazards } from "./trouble/try-hazards.ts";
export { drawingFault, type Beside } from "./card/build-card.ts";
export { DRAWING_FIELD, LOOKS, readDrawing, type Drawing, type Look, type Shape } from "./card/drawing.ts";
export { pictureFaults, type PictureFault } from "./pictures/build-pictures.ts";
export { PICTURES_FILE, type LineDrawing, type Pictures, type Pointer } from "./pictures/pictures.ts";
export { litShapes, type LitAs, type LitShape } from "./pictures/lit.ts";
export { pictureAt, picturesAt, type Picture, type PictureAsked } from "./pictures/shown.ts";
export { lintPattern, lintPatternText } from "./lint/lint.ts";
export { LINT_RULES, type LintFault, type LintRule } from "./lint/lint-fault.ts";
export { CAUTIONS_FOR } from "./hazards.ts";
export {
  differencesOf,
  toLookAtAgain,
  type LookAgain,
  type PatternDifference,
  type PatternPart,
} from "./versions/differences.ts";
export { otherWork } from "./versions/other-work.ts";
export { forbiddenBy, forbiddenByUnknown, heldByHalfDone, mayBePlanted, workOf } from "./work/forbids.ts";
export type { Work } from "./work/work.ts";
export { EFFECTS_BY_WEIGHT, gravestEffect } from "./gravest-effect.ts";
export { isSeenClosed } from "./seen-closed.ts";
export { STAGE_ORDER } from "./stage-order.ts";
export { PatternDraft, editDraft, openDraft, undoEdit, type Edited } from "./edit/edit-pattern.ts";
export type { Splice } from "./edit/edit-source.ts";
export { emptyPattern } from "./edit/empty-pattern.ts";
export { fieldAt, namedIn, patternForm, type BlockField, type FieldBlock, type FormField } from "./edit/form-fields.ts";
export { lintDraft, nameOf, type DraftFault, type LintWeight } from "./edit/lint-draft.ts";
export { changedKind, copyOf, newEntry } from "./edit/new-entry.ts";
export { editValue, type PatternEdit, type PlainValue } from "./edit/pattern-edit.ts";
export { usesOf, type Use } from "./edit/uses.ts";
export { printPath, type FilePath } from "./file/yaml-source.ts";
export { valueAt } from "./file/file-faults.ts";
