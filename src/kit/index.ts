export * from "./pattern.ts";
export { loadPattern, patternJsonSchema } from "./load-pattern.ts";
export * from "./look-ups.ts";
export { linesOf, type PatternLine } from "./lines.ts";
export { lintPattern, lintPatternText } from "./lint.ts";
export { LINT_RULES, type LintFault, type LintRule } from "./lint-fault.ts";
export { CAUTIONS_FOR } from "./hazards.ts";
export { STAGE_ORDER } from "./stage-order.ts";
