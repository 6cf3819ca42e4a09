import { gravestFirst } from "#base";
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

/** Earlier lines of the same stage, and all of the stage before. */
function linesBefore(lines: readonly Line[], line: Line): readonly Line[] {
  const stages = [...new Set(lines.map(({ stage }) => stage.id))];
  const near = [line.stage.id, stages[stages.indexOf(line.stage.id) - 1]];
  return lines.filter(({ stage, step }) => near.includes(stage.id) && step.line < line.step.line);
}
