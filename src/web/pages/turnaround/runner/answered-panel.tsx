import { answersAt, isRemedied, openFindings, proofWanted, type Answer, type Finding } from "#readiness";
import type { Words } from "#words";
import { useWords, withParts } from "#web/language/index.ts";
import { writeValue } from "#web/act/reading.ts";
import { MendPanel } from "../mend/mend-panel.tsx";
import { Button, ErrorBox, GloveRow, Notice, Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { sayWho } from "#web/kit-view/at-hand.ts";
import type { Answered } from "#web/act/lines.ts";
import { Afterwards } from "../afterwards/afterwards-note.tsx";
import type { Answering } from "../answer/use-answering.ts";
import { useFocusIfLost } from "./use-focus-if-lost.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { sayAnswer, sayCard } from "#web/act/wording.ts";

interface AnsweredPanelProps extends Answering {
  readonly answered: Answered;
  /** A finding that grounds the kit was raised just now: it is brought in sight. */
  readonly isRaised: boolean;
  readonly onAgain: () => void;
  readonly onRaise: () => void;
  readonly onNext: () => void;
}

/** The answer that stands here, who gave it, and the ways on: next, answer again, raise what is missing. */
export function AnsweredPanel(props: AnsweredPanelProps) {
  const { open, ask, answered } = props;
  const words = useWords("turnaroundLine");
  const answers = { act: useWords("act"), parts: useWords("parts") };
  const panel = useFocusIfLost<HTMLDivElement>();
  const raised = findingsHere(open, props.line.step.id, ask.check?.id);
  return (
    <div ref={panel} tabIndex={-1} className="answered">
      <p className="answered-words">
        <strong>{sayAnswer(answered, ask.check, answers)}</strong>
      </p>
      <p className="quiet">
        {sayWho(open.view, answered.mark)}
        {sayCard(answered, answers.act)}
      </p>
      {answered.note !== undefined && <p>{words.noteIs({ note: answered.note })}</p>}
      <AnswerPhotos {...props} />
      <Before {...props} />
      {raised.map((finding) => (
        <MendPanel
          key={`${finding.id} ${finding.remedies.length}`}
          open={open}
          acts={props.acts}
          finding={finding}
          check={ask.check?.id}
          isNews={props.isRaised}
          onAgain={props.onAgain}
        />
      ))}
      {answered.answer === "wrong" && raised.length === 0 && (
        <Notice tone="attention" title={words.noFindingYet()}>
          <Button onPress={props.onRaise}>{words.raise()}</Button>
        </Notice>
      )}
      <Afterwards line={props.line} asks={[ask]} />
      <GloveRow>
        <Button kind="primary" onPress={props.onNext}>
          {words.goOn()}
        </Button>
        <Button onPress={props.onAgain}>{words.answerAgain()}</Button>
      </GloveRow>
    </div>
  );
}

/** Open findings of this ask: those raised here in this turnaround, and those mended that it helps to prove. */
function findingsHere({ kit, turnaround, pattern }: OpenKit, step: string, check: string | undefined) {
  const isRaisedHere = (one: Finding) => one.turnaround === turnaround.id && one.step === step && one.check === check;
  const isProvedHere = (one: Finding) =>
    isRemedied(one) && check !== undefined && proofWanted(one, pattern).some(({ id }) => id === check);
  return openFindings(kit).filter((one) => isRaisedHere(one) || isProvedHere(one));
}

/** What was answered here before, oldest first: a later answer hides none. */
function Before({ open, line, ask }: AnsweredPanelProps) {
  const { units } = usePreferences();
  const words = useWords("turnaroundLine");
  const parts = useWords("parts");
  const at = { turnaround: open.turnaround.id, step: line.step.id, ...(ask.check && { check: ask.check.id }) };
  const before = answersAt(open.view.entriesOf(`kit:${open.kit.id}`), at).slice(0, -1);
  const told = before.filter(({ answer }) => answer.value !== undefined || answer.answer === "wrong");
  if (told.length === 0) return null;
  return (
    <ul className="finding-done" aria-label={words.answeredBefore()}>
      {told.map(({ entry, answer }) => (
        <li key={entry.id} className="quiet">
          {sayBefore(answer.answer, answer.value && writeValue(answer.value, parts, units), entry.at, words)}
        </li>
      ))}
    </ul>
  );
}

function sayBefore(answer: Answer, value: string | undefined, at: string, words: Words["turnaroundLine"]) {
  const parts = { value: <strong className="tabular">{value}</strong>, at: <Timestamp at={at} /> };
  const isWrong = answer === "wrong";
  if (value === undefined) return withParts(isWrong ? words.beforeWrong : words.beforeAnswered, parts);
  return withParts(isWrong ? words.beforeWrongRead : words.beforeAnsweredRead, parts);
}

/** Photos of the answer; one more is added by giving the same answer again with it. */
function AnswerPhotos({ open, acts, line, ask, answered }: AnsweredPanelProps) {
  const saving = useSaving();
  const words = useWords("turnaroundLine");
  const where = { turnaround: open.turnaround.id, step: line.step.id };
  const { answer, why, value, note, photos = [], fromCard, cardAt } = answered;
  const kept = {
    ...(why !== undefined && { why }),
    ...(value && { value }),
    ...(note !== undefined && { note }),
    ...(fromCard !== undefined && { fromCard }),
    ...(cardAt !== undefined && { cardAt }),
  };
  return (
    <>
      <PhotoStrip
        photos={photos}
        label={words.line({ line: line.step.line })}
        onAdd={(photo) =>
          void saving.save(() => acts.answer(where, ask, answer, { ...kept, photos: [...photos, photo] }))
        }
      />
      <ErrorBox error={saving.error} title={words.photoNotAdded()} />
    </>
  );
}
