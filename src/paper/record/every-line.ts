import { checkNamed, stageNamed, type StageId } from "#kit";
import { recordOf, type RecordLine } from "#readiness";
import type { Sheet } from "../sheet.ts";
import type { TurnaroundRecord } from "./record.ts";
import { writeFlow } from "../flow/flow.ts";
import { textPiece, type Block } from "../flow/text-piece.ts";
import { answerWordsOf, findingsOf, findingWords, instantWords, labelOf, labelsOf, nameOf, said } from "#station";

/** Every line with the words the screen had, stage by stage, in two columns, in letters of this size [pt]. */
export function writeLines(sheet: Sheet, record: TurnaroundRecord, size: number): void {
  const lines = recordOf(record.turnaround, record.pattern);
  const labels = labelsOf(record.pattern);
  const stages = [...new Set(lines.map(({ stage }) => stage))];
  sheet.need(60);
  sheet.heading("Every line");
  const blocks = stages.flatMap((stage) => stageBlocks(record, stage, { labels, lines }));
  writeFlow(
    sheet,
    blocks.map((block) => textPiece(block, size)),
  );
}

interface Listed {
  readonly labels: ReadonlyMap<string, string>;
  readonly lines: readonly RecordLine[];
}

function stageBlocks(record: TurnaroundRecord, stage: StageId, { labels, lines }: Listed): readonly Block[] {
  const own = lines.filter((line) => line.stage === stage);
  const main = mainPerson(own);
  const name = stageNamed(record.pattern, stage)?.name ?? stage;
  const heading = { text: main === undefined ? name : `${name}: ${nameOf(record, main)}`, heading: true };
  return [heading, ...own.map((line) => lineBlock(record, line, { label: labelOf(labels, line), main }))];
}

interface Around {
  readonly label: string;
  /** Who answered most of the stage, and is named at its head. */
  readonly main: string | undefined;
}

function lineBlock(record: TurnaroundRecord, line: RecordLine, { label, main }: Around): Block {
  const { mark, answer } = line;
  const by = mark && mark.by !== main ? `, ${nameOf(record, mark.by)}` : "";
  const when = mark ? `  [${mark.at.slice(11, 16)}${by}]` : "";
  const then = line.afterwards === undefined ? "" : ` Then: ${line.afterwards}`;
  return { text: `${label}  ${line.text} \u2013 ${said(record, line)}${when}${then}`, bold: answer !== "seen" };
}

function mainPerson(lines: readonly RecordLine[]): string | undefined {
  const by = lines.flatMap(({ mark }) => (mark ? [mark.by] : []));
  const count = (person: string) => by.filter((one) => one === person).length;
  return [...new Set(by)].toSorted((one, other) => count(other) - count(one))[0];
}

/** Photos of the findings and of the lines, each with what it shows: exceptions first. */
export function photosOf(record: TurnaroundRecord): readonly { readonly hash: string; readonly caption: string }[] {
  const ofFindings = findingsOf(record).flatMap((finding) =>
    finding.photos.map(({ hash }) => ({ hash, caption: `Finding: ${findingWords(record.pattern, finding)}` })),
  );
  return [...ofFindings, ...photosOfLines(record)];
}

function photosOfLines(record: TurnaroundRecord) {
  const { pattern, turnaround } = record;
  const labels = labelsOf(pattern);
  return Object.entries(turnaround.answers).flatMap(([key, answer]) => {
    const asked = answer.check === undefined ? undefined : checkNamed(pattern, answer.check)?.ask;
    const words = `Line ${labels.get(key) ?? key}: ${asked ?? ""} ${answerWordsOf(record, answer)}`;
    const caption = `${words}, ${instantWords(answer.mark.at)}`;
    return (answer.photos ?? []).map(({ hash }) => ({ hash, caption }));
  });
}
