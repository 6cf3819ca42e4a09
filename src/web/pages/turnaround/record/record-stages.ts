import { allSteps, type Stage } from "#kit";
import { answerKey, recordOf, type RecordLine } from "#readiness";
import { isAmiss, type RecordRead } from "#station";
import type { Words } from "#words";

/** A stage of the record: what is to be read, and what one line tells. */
export interface RecordStage {
  readonly stage: Stage;
  /** All of its lines, in order. */
  readonly lines: readonly RecordLine[];
  /** Not seen right at once, or seen right with a note or a photo; in order. */
  readonly shown: readonly RecordLine[];
  /** Seen right or done as written, and left out as they may be; in order. */
  readonly plain: readonly RecordLine[];
}

/** The stages of a record, each with its plain lines apart from those that say more. */
export function stagesOf(record: RecordRead): readonly RecordStage[] {
  const recorded = recordOf(record.turnaround, record.pattern);
  return record.pattern.stages.flatMap((stage) => {
    const all = recorded.filter((line) => line.stage === stage.id);
    const plain = all.filter((line) => isPlain(record, line));
    const shown = all.filter((line) => !plain.includes(line));
    return all.length === 0 ? [] : [{ stage, lines: all, shown, plain }];
  });
}

function isPlain(record: RecordRead, line: RecordLine): boolean {
  if (isLeftOut(record, line)) return true;
  const { photos = [] } = record.turnaround.answers[answerKey(line.step, line.check)] ?? {};
  return !isAmiss(record, line) && line.note === undefined && photos.length === 0;
}

/** True for a line that was not answered and may be left out. */
export function isLeftOut({ pattern }: Pick<RecordRead, "pattern">, { step, answer }: RecordLine): boolean {
  return answer === undefined && allSteps(pattern).some(({ id, optional }) => id === step && optional);
}

/** The plain lines of a stage in one: "Examine: 22 lines, all found right". */
export function sayPlain({ stage, shown, plain }: RecordStage, words: Words["turnaroundRecord"]): string {
  const answered = plain.filter(({ answer }) => answer !== undefined);
  const told = { stage: stage.name, count: linesIn(answered), left: linesIn(plain) - linesIn(answered) };
  if (answered.length === 0) return words.stageLeftOut(told);
  if (shown.length > 0) return words.othersRight(told);
  return answered.some(({ check }) => check !== undefined) ? words.allRight(told) : words.allDone(told);
}

/** Lines as the card numbers them: several checks of one step are one. */
function linesIn(lines: readonly RecordLine[]): number {
  return new Set(lines.map(({ line }) => line)).size;
}
