import type { Pattern } from "../pattern.ts";
import type { LintHit } from "./lint-fault.ts";

// Common practice: how an English line speaks of an engine that has not run, or has cooled. A reminder only: no program
// goes by these words.
const SPEAKS_OF_IT = /\bengine (is )?(cold|cool)\b|\b(cold|cool) engine\b/i;

/** A cause or a try, as far as this asks. */
interface Line {
  readonly says: string;
  readonly engine?: string;
  readonly where: string;
}

/** Causes and tries that speak of a cold or a cool engine name it in `engine`; where there is no engine, none does. */
export function troubleEngineLint(pattern: Pattern): readonly LintHit[] {
  const lines = linesOf(pattern);
  if (pattern.engine === undefined)
    return lines.filter(({ engine }) => engine !== undefined).map(({ where }) => ({ ...OF_NONE, where }));
  const unsaid = lines.filter(({ says, engine }) => engine === undefined && SPEAKS_OF_IT.test(says));
  return unsaid.map(({ where }) => ({ ...UNSAID, where }));
}

function linesOf({ troubles = [] }: Pattern): readonly Line[] {
  return troubles.flatMap(({ causes, tries }, i) => [
    ...causes.map((one, at) => ({ ...one, where: `troubles[${i}].causes[${at}].engine` })),
    ...tries.map((one, at) => ({ ...one, says: one.does, where: `troubles[${i}].tries[${at}].engine` })),
  ]);
}

const UNSAID = {
  rule: "engine-unsaid",
  what: "It speaks of a cold or a cool engine, and `engine` is left out: after a run it counts as on any engine.",
  remedy: "Write `engine: cold` where it holds of, or helps, a cold engine only; `engine: cool` at a try that waits.",
} as const;
const OF_NONE = {
  rule: "engine-of-none",
  what: "It names an engine, cold or cool, and the pattern has none.",
  remedy: "Leave `engine` out here, or write the engine of the pattern.",
} as const;
