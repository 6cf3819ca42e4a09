import type { Beside } from "../card/build-card.ts";
import { namesIn } from "../file/file-names.ts";
import { valueAt } from "../file/file-faults.ts";
import type { FilePath } from "../file/yaml-source.ts";
import { lintPatternText } from "../lint/lint.ts";
import type { LintFault, LintRule } from "../lint/lint-fault.ts";
import { fieldOfRule } from "./field-of-rule.ts";
import type { PatternDraft } from "./edit-pattern.ts";

/** How much a fault weighs: with an error a pattern is not issued; a warning is to be read; a note may stay. */
export type LintWeight = "error" | "warning" | "note";

/** One fault of a draft, and where in it. */
export interface DraftFault extends LintFault {
  readonly weight: LintWeight;
  /** The field, or the block, that it is about. */
  readonly path: FilePath;
}

/** Rules that do not keep a pattern from being issued. Whatever is not named here does. */
const LIGHTER: Readonly<Partial<Record<LintRule, LintWeight>>> = {
  "too-long-to-read": "warning",
  vague: "warning",
  "time-too-short": "warning",
  "delivery-never-measured": "warning",
  "own-caution-not-first": "warning",
  "met-unanswered": "warning",
  "forbids-unsaid": "warning",
  "leak-proved-cold": "warning",
  "engine-unsaid": "warning",
  "card-undrawn": "warning",
  "card-missing": "note",
  "card-part-missing": "warning",
  "card-untranslated": "note",
};

/**
 * The lint of a draft: the one lint, each fault with its weight and its place in the form.
 *
 * @param beside - reads the files that stand beside it, its drawings
 */
export function lintDraft(draft: PatternDraft, beside?: Beside): readonly DraftFault[] {
  return lintPatternText(draft.text, nameOf(draft.value), beside).map((fault) => ({
    ...fault,
    weight: weightOf(fault.rule),
    path: placeOf(draft.value, fault),
  }));
}

/** @param rule - of the lint */
export function weightOf(rule: LintRule): LintWeight {
  return LIGHTER[rule] ?? "error";
}

/** The name that a pattern's file has, by what is in it. */
export function nameOf(value: unknown): string {
  return `${String(valueAt(value, ["id"]))}@${String(valueAt(value, ["version"]))}.yaml`;
}

function placeOf(value: unknown, { rule, where }: LintFault): FilePath {
  if (rule === "loads") return there(value, readPath(where.split(" ")[1] ?? ""));
  const [what = "", id = ""] = where.split(" ");
  const named = Object.entries(namesIn(value)).find(([sort]) => sort === what)?.[1];
  const path = named?.find((one) => one.id === id)?.path;
  const block = path?.slice(0, -1);
  const isStage = what === "stage";
  return block && !isStage ? fieldOfRule(value, rule, block) : (block ?? there(value, readPath(what)));
}

/** "items[3].life" as a path. */
function readPath(text: string): FilePath {
  return [...text.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, number, name]) =>
    number === undefined ? (name ?? "") : Number(number),
  );
}

/** As much of a path as is there, and the field behind that: it may be the one that is missing. */
function there(value: unknown, path: FilePath): FilePath {
  const at = path.findIndex((_, depth) => valueAt(value, path.slice(0, depth + 1)) === undefined);
  return at === -1 ? path : path.slice(0, at + 1);
}
