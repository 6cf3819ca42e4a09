import { answerKey, type RecordLine } from "#readiness";
import { instantWords, labelOf, labelsOf, nameOf, said, type RecordRead } from "#station";
import { useWords } from "#web/language/index.ts";
import { MoreOnPhone, Section } from "#web/parts/index.ts";
import { useIsPhone } from "#web/parts/more-on-phone.tsx";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { isLeftOut, sayPlain, stagesOf } from "./record-stages.ts";

/**
 * Every line of the record, stage by stage, in the words of the paper: readings with their limits, and all repeats. On a phone
 * what was plainly right is one line for each stage, which opens; what says more stands open.
 */
export function RecordLines({ record }: { readonly record: RecordRead }) {
  const isPhone = useIsPhone();
  const words = useWords("turnaroundRecord");
  return stagesOf(record).map((one) =>
    isPhone ? (
      <section key={one.stage.id} className="record-fold" aria-label={one.stage.name}>
        {one.shown.length > 0 && <h2>{one.stage.name}</h2>}
        <Lines record={record} lines={one.shown} />
        {one.plain.length > 0 && (
          <MoreOnPhone title={sayPlain(one, words)}>
            <Lines record={record} lines={one.plain} />
          </MoreOnPhone>
        )}
      </section>
    ) : (
      <Section key={one.stage.id} title={one.stage.name}>
        <Lines record={record} lines={one.lines} />
      </Section>
    ),
  );
}

function Lines({ record, lines }: { readonly record: RecordRead; readonly lines: readonly RecordLine[] }) {
  if (lines.length === 0) return null;
  return (
    <ol className="record-lines">
      {lines.map((line) => (
        <RecordRow key={answerKey(line.step, line.check)} record={record} line={line} />
      ))}
    </ol>
  );
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
