import { findCaution, gravestFirst, SIGNAL_WORDS } from "#base";
import type { Line } from "#web/act/lines.ts";

/** How each caution of a line is shown. */
export interface CautionWeight {
  /** As a whole panel: the gravest that begins here; of equals the line's own, which it names first. */
  readonly whole: readonly string[];
  /** Begins here beside it: its name and what to do, the rest on a tap. */
  readonly begun: readonly string[];
  /** Was shown before in this stage or the one before: its name. */
  readonly goingOn: readonly string[];
}

/**
 * A danger begins at a line where no earlier line of its stage, nor any of the stage before, has it: who read it an
 * hour ago reads it again, who read it at the last line sees its name.
 */
export function weighCautions(lines: readonly Line[], line: Line): CautionWeight {
  const { cautions } = line.step;
  const read = new Set(linesBefore(lines, line).flatMap(({ step }) => step.cautions));
  const fresh = gravestFirst(cautions.filter((id) => !read.has(id)));
  return { whole: fresh.slice(0, 1), begun: fresh.slice(1), goingOn: cautions.filter((id) => read.has(id)) };
}

/** Cautions beside each other that are shown alike; names that go on share a row. */
export interface CautionRow {
  readonly how: keyof CautionWeight;
  readonly ids: readonly string[];
}

/**
 * The cautions of a line in the order they stand: by their signal words, gravest first, whole or folded. Of one word
 * what begins stands first; names that go on come before it where a row of such names ends just above.
 */
export function cautionRows(lines: readonly Line[], line: Line): readonly CautionRow[] {
  const { whole, begun, goingOn } = weighCautions(lines, line);
  return Object.keys(SIGNAL_WORDS).reduce<readonly CautionRow[]>((rows, word) => {
    const named = ofWord(goingOn, word);
    const fresh = [
      ...ofWord(whole, word).map((id) => ({ how: "whole" as const, ids: [id] })),
      ...ofWord(begun, word).map((id) => ({ how: "begun" as const, ids: [id] })),
    ];
    const last = rows.at(-1);
    if (last?.how === "goingOn") return [...rows.slice(0, -1), { ...last, ids: [...last.ids, ...named] }, ...fresh];
    return [...rows, ...fresh, ...(named.length > 0 ? [{ how: "goingOn" as const, ids: named }] : [])];
  }, []);
}

/** Of these those with this signal word; what is not known counts as a notice. */
function ofWord(ids: readonly string[], word: string): readonly string[] {
  return ids.filter((id) => (findCaution(id)?.signal ?? "NOTICE") === word);
}

/** Earlier lines of the same stage, and all of the stage before. */
function linesBefore(lines: readonly Line[], line: Line): readonly Line[] {
  const stages = [...new Set(lines.map(({ stage }) => stage.id))];
  const near = [line.stage.id, stages[stages.indexOf(line.stage.id) - 1]];
  return lines.filter(({ stage, step }) => near.includes(stage.id) && step.line < line.step.line);
}
