import { checkNamed, linesOf, type Pattern } from "#kit";
import { answerKey, recordOf, type RecordLine, type Turnaround } from "#readiness";
import { Section } from "../../../parts/index.ts";
import { PhotoStrip } from "../../../parts/photo-strip.tsx";
import { sayWho, type KitAtHand } from "../../../kit-view/at-hand.ts";
import type { Answered } from "../../../act/lines.ts";
import { sayAnswer, sayCard } from "../../../act/wording.ts";

interface RecordLinesProps {
  readonly at: KitAtHand;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
}

/** Every line of the record, stage by stage. */
export function RecordLines({ at, turnaround, pattern }: RecordLinesProps) {
  const lines = recordOf(turnaround, pattern);
  const labels = new Map(linesOf(pattern).map(({ label, step, check }) => [answerKey(step.id, check?.id), label]));
  return pattern.stages.map((stage) => (
    <Section key={stage.id} title={stage.name}>
      <ol className="record-lines">
        {lines
          .filter((line) => line.stage === stage.id)
          .map((line) => (
            <RecordRow
              key={keyOf(line)}
              label={labels.get(keyOf(line)) ?? String(line.line)}
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
  return answerKey(line.step, line.check);
}

interface RecordRowProps {
  readonly at: KitAtHand;
  readonly pattern: Pattern;
  /** As printed on the card: "12", "12a". */
  readonly label: string;
  readonly line: RecordLine;
  readonly answered: Answered | undefined;
}

function RecordRow({ at, pattern, label, line, answered }: RecordRowProps) {
  const check = line.check === undefined ? undefined : checkNamed(pattern, line.check);
  return (
    <li className="record-line">
      <span className="record-number tabular">{label}</span>
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
        {answered?.photos && <PhotoStrip photos={answered.photos} label={`Line ${label}`} />}
      </div>
    </li>
  );
}
