import { checkNamed, type Pattern } from "#kit";
import { recordOf, type RecordLine, type Turnaround } from "#readiness";
import { PhotoStrip, Section } from "../../parts/index.ts";
import { sayWho, type KitAtHand } from "./at-hand.ts";
import type { Answered } from "./lines.ts";
import { sayAnswer, sayCard } from "./wording.ts";

interface RecordLinesProps {
  readonly at: KitAtHand;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
}

/** Every line of the record, stage by stage. */
export function RecordLines({ at, turnaround, pattern }: RecordLinesProps) {
  const lines = recordOf(turnaround, pattern);
  return pattern.stages.map((stage) => (
    <Section key={stage.id} title={stage.name}>
      <ol className="record-lines">
        {lines
          .filter((line) => line.stage === stage.id)
          .map((line) => (
            <RecordRow
              key={keyOf(line)}
              at={at}
              pattern={pattern}
              line={line}
              answered={turnaround.answers[keyOf(line)]}
            />
          ))}
      </ol>
    </Section>
  ));
}

function keyOf(line: RecordLine): string {
  return line.check === undefined ? line.step : `${line.step}/${line.check}`;
}

interface RecordRowProps {
  readonly at: KitAtHand;
  readonly pattern: Pattern;
  readonly line: RecordLine;
  readonly answered: Answered | undefined;
}

function RecordRow({ at, pattern, line, answered }: RecordRowProps) {
  const check = line.check === undefined ? undefined : checkNamed(pattern, line.check);
  return (
    <li className="record-line">
      <span className="record-number tabular">{line.line}</span>
      <div>
        <p>{line.text}</p>
        {answered ? (
          <p className={`record-answer record-${answered.answer}`}>
            <strong>{sayAnswer(answered, check)}</strong>{" "}
            <span className="quiet">
              {sayWho(at.view, answered.mark)}
              {sayCard(answered)}
            </span>
          </p>
        ) : (
          <p className="quiet">Not answered</p>
        )}
        {answered?.note !== undefined && <p>Note: {answered.note}</p>}
        {answered?.photos && <PhotoStrip photos={answered.photos} label={`Line ${line.line}`} />}
      </div>
    </li>
  );
}
