import type { FilePosition } from "../file/yaml-source.ts";

/** Rules of the lint, by name; names are never reused. */
export const LINT_RULES = [
  "loads",
  "file-name",
  "mode-unfound",
  "item-without-mode",
  "item-not-restowed",
  "check-without-effect",
  "check-never-asked",
  "printed-date-never-read",
  "date-never-in-hand",
  "unread-unsaid",
  "single-use-not-renewed",
  "limit-unstated",
  "remedy-unstated",
  "hazard-without-caution",
  "stages-missing-or-out-of-order",
  "time-missing",
  "time-too-short",
  "delivery-never-measured",
  "unit-unknown",
  "out-of-range",
  "curve-not-monotone",
  "too-long-to-read",
  "promises-safety",
  "vague",
  "card-missing",
  "card-part-missing",
  "card-caution-missing",
  "card-undrawn",
  "card-untranslated",
  "card-part-unknown",
  "met-unanswered",
  "flush-left-out",
  "counted-without-mode",
  "step-after-unknown",
  "forbids-unsaid",
  "forbids-nothing",
  "leak-proved-cold",
  "runs-on-unstarted",
  "one-look-not-one",
  "not-done-together",
  "afterwards-misplaced",
  "own-caution-not-first",
  "lift-unsaid",
  "lift-too-heavy",
  "machine-unsaid",
  "fuel-of-another",
  "try-without-hazard",
  "engine-unsaid",
  "engine-of-none",
  "drawing-unread",
  "drawing-never-shown",
  "drawing-untitled",
  "drawing-part-unnamed",
  "shown-line-unknown",
  "shown-drawing-unknown",
  "shown-part-unknown",
  "restow-without-layer",
  "wear-and-loss",
] as const;

export type LintRule = (typeof LINT_RULES)[number];

/** One thing the lint found. */
export interface LintFault {
  readonly rule: LintRule;
  /** The thing it is about, such as "mode clamp-bent" or "step 12 (vent)". */
  readonly where: string;
  readonly what: string;
  readonly remedy: string;
  /** Where in the file, when the text was given. */
  readonly at?: FilePosition;
  /** Where it does not load: what is written there, and what may be. */
  readonly given?: { readonly got: string; readonly allowed: string };
  /** True where it is only a note: the pattern is sound with it. */
  readonly isNote?: boolean;
}

/** A fault before its place in the file is known: `of` names the thing by id. */
export interface LintHit extends LintFault {
  readonly of?: { readonly what: "item" | "mode" | "check" | "step" | "stage" | "card"; readonly id: string };
}

/** A fault of one named thing. */
export function hit(
  rule: LintRule,
  of: NonNullable<LintHit["of"]>,
  told: { readonly what: string; readonly remedy: string },
): LintHit {
  return { rule, where: `${of.what} ${of.id}`, ...told, of };
}
