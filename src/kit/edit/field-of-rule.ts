import { valueAt } from "../file/file-faults.ts";
import type { FilePath } from "../file/yaml-source.ts";
import type { LintRule } from "../lint/lint-fault.ts";

/** The field of an item, mode, check or step that mends what a rule found. */
const FIELDS: Readonly<Partial<Record<LintRule, string>>> = {
  "item-without-mode": "modes",
  "printed-date-never-read": "checks",
  "unread-unsaid": "unread",
  "remedy-unstated": "remedy",
  "forbids-unsaid": "forbids",
  "forbids-nothing": "forbids",
  "runs-on-unstarted": "forbids",
  "leak-proved-cold": "provedBy",
  "check-without-effect": "finds",
  "unit-unknown": "unit",
  "hazard-without-caution": "cautions",
  "own-caution-not-first": "cautions",
  "time-too-short": "minutes",
  "one-look-not-one": "oneLook",
  "not-done-together": "withNext",
  "lift-unsaid": "lift",
  "lift-too-heavy": "lift",
  "step-after-unknown": "after",
};

/** The way to the field that a rule is about, in the block that it names; the block itself where several may be. */
export function fieldOfRule(value: unknown, rule: LintRule, block: FilePath): FilePath {
  const field = rule === "afterwards-misplaced" ? misplacedAt(value, block) : FIELDS[rule];
  return field === undefined ? block : [...block, field];
}

/** Words of what is done afterwards stand in the text, or by themselves where nothing is asked. */
function misplacedAt(value: unknown, block: FilePath): string {
  return valueAt(value, [...block, "afterwards"]) === undefined ? "text" : "afterwards";
}
