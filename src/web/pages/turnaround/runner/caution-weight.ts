import type { Line } from "#web/act/lines.ts";
import { rowsOf, weigh, type CautionRow, type CautionWeight } from "#web/parts/caution-weight.ts";

/**
 * A danger begins at a line where no earlier line of its stage, nor any of the stage before, has it: who read it an
 * hour ago reads it again, who read it at the last line sees its name.
 */
export function weighCautions(lines: readonly Line[], line: Line): CautionWeight {
  return weigh(line.step.cautions, new Set(linesBefore(lines, line).flatMap(({ step }) => step.cautions)));
}

/** The cautions of a line in the order they stand. */
export function cautionRows(lines: readonly Line[], line: Line): readonly CautionRow[] {
  return rowsOf(weighCautions(lines, line));
}

/** Earlier lines of the same stage, and all of the stage before. */
function linesBefore(lines: readonly Line[], line: Line): readonly Line[] {
  const stages = [...new Set(lines.map(({ stage }) => stage.id))];
  const near = [line.stage.id, stages[stages.indexOf(line.stage.id) - 1]];
  return lines.filter(({ stage, step }) => near.includes(stage.id) && step.line < line.step.line);
}
