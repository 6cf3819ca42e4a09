import { allSteps } from "#kit";
import { answerKey, recordOf, type RecordLine } from "#readiness";
import { instantWords, labelOf, labelsOf, nameOf, said, type RecordRead } from "#station";
import { useWords } from "#web/language/index.ts";
import { Section } from "#web/parts/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";

/** Every line of the record, stage by stage, in the words of the paper: readings with their limits, and all repeats. */
export function RecordLines({ record }: { readonly record: RecordRead }) {
  const lines = recordOf(record.turnaround, record.pattern);
  return record.pattern.stages.map((stage) => (
    <Section key={stage.id} title={stage.name}>
      <ol className="record-lines">
        {lines
          .filter((line) => line.stage === stage.id)
          .map((line) => (
            <RecordRow key={answerKey(line.step, line.check)} record={record} line={line} />
          ))}
      </ol>
    </Section>
  ));
}

function RecordRow({ record, line }: { readonly record: RecordRead; readonly line: RecordLine }) {
  const words = useWords("turnaroundRecord");
  const label = labelOf(labelsOf(record.pattern), line);
  const { photos = [] } = record.turnaround.answers[answerKey(line.step, line.check)] ?? {};
  return (
    <li className="record-line">
      <span className="record-number tabular">{label}</span>
      <div>
        <p>{line.text}</p>
        <p className={`record-answer record-${line.answer ?? "open"}`}>
          <strong>{isLeftOut(record, line) ? words.leftOut() : said(record, line)}</strong>{" "}
          {line.mark && (
            <span className="quiet">
              {nameOf(record, line.mark.by)}, {instantWords(line.mark.at)}
            </span>
          )}
        </p>
        {line.afterwards !== undefined && <p className="quiet">{words.afterwards({ words: line.afterwards })}</p>}
        {photos.length > 0 && <PhotoStrip photos={photos} label={words.line({ line: label })} />}
      </div>
    </li>
  );
}

function isLeftOut({ pattern }: RecordRead, { step, answer }: RecordLine): boolean {
  return answer === undefined && allSteps(pattern).some(({ id, optional }) => id === step && optional);
}
