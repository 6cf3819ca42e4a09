export * from "./pattern.ts";
export { loadPattern, patternJsonSchema } from "./file/load-pattern.ts";
export * from "./look-ups.ts";
export { MET, type AfterMet, type AfterUse, type CountedItem, type Met } from "./after-use/after-use.ts";
export { isCalledFor, patternAfter } from "./after-use/pattern-after.ts";
export { linesOf, type PatternLine } from "./lines.ts";
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
export { drawingFault, type Beside } from "./card/build-card.ts";
export { DRAWING_FIELD, LOOKS, readDrawing, type Drawing, type Look, type Shape } from "./card/drawing.ts";
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
export { forbiddenBy, forbiddenByUnknown, heldByHalfDone, workOf } from "./work/forbids.ts";
export type { Work } from "./work/work.ts";
export { STAGE_ORDER } from "./stage-order.ts";
