import { answersAt, isRemedied, openFindings, proofWanted, type Finding } from "#readiness";
import { writeValue } from "#web/act/reading.ts";
import { MendPanel } from "../mend/mend-panel.tsx";
import { Button, ErrorBox, GloveRow, Notice, Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { sayWho } from "#web/kit-view/at-hand.ts";
import type { Answered } from "#web/act/lines.ts";
import type { Answering } from "../answer/use-answering.ts";
import { useFocusIfLost } from "./use-focus-if-lost.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { sayAnswer, sayCard } from "#web/act/wording.ts";

interface AnsweredPanelProps extends Answering {
  readonly answered: Answered;
  readonly onAgain: () => void;
  readonly onRaise: () => void;
  readonly onNext: () => void;
}

/** The answer that stands here, who gave it, and the ways on: next, answer again, raise what is missing. */
export function AnsweredPanel(props: AnsweredPanelProps) {
  const { open, ask, answered } = props;
  const panel = useFocusIfLost<HTMLDivElement>();
  const raised = findingsHere(open, props.line.step.id, ask.check?.id);
  return (
    <div ref={panel} tabIndex={-1} className="answered">
      <p className="answered-words">
        <strong>{sayAnswer(answered, ask.check)}</strong>
      </p>
      <p className="quiet">
        {sayWho(open.view, answered.mark)}
        {sayCard(answered)}
      </p>
      {answered.note !== undefined && <p>Note: {answered.note}</p>}
      <AnswerPhotos {...props} />
      <Before {...props} />
      {raised.map((finding) => (
        <MendPanel
          key={`${finding.id} ${finding.remedies.length}`}
          open={open}
          acts={props.acts}
          finding={finding}
          check={ask.check?.id}
          onAgain={props.onAgain}
        />
      ))}
      {answered.answer === "wrong" && raised.length === 0 && (
        <Notice tone="attention" title="No finding raised from this yet">
          <Button onPress={props.onRaise}>Raise the finding</Button>
        </Notice>
      )}
      <GloveRow>
        <Button kind="primary" onPress={props.onNext}>
          Go on
        </Button>
        <Button onPress={props.onAgain}>Answer again</Button>
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
  const at = { turnaround: open.turnaround.id, step: line.step.id, ...(ask.check && { check: ask.check.id }) };
  const before = answersAt(open.view.entriesOf(`kit:${open.kit.id}`), at).slice(0, -1);
  const told = before.filter(({ answer }) => answer.value !== undefined || answer.answer === "wrong");
  if (told.length === 0) return null;
  return (
    <ul className="finding-done" aria-label="Answered before">
      {told.map(({ entry, answer }) => (
        <li key={entry.id} className="quiet">
          Before: {answer.answer === "wrong" ? "found wrong" : "answered"}
          {answer.value && <strong className="tabular"> {writeValue(answer.value, units)}</strong>},{" "}
          <Timestamp at={entry.at} />
        </li>
      ))}
    </ul>
  );
}

/** Photos of the answer; one more is added by giving the same answer again with it. */
function AnswerPhotos({ open, acts, line, ask, answered }: AnsweredPanelProps) {
  const saving = useSaving();
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
        label={`Line ${line.step.line}`}
        onAdd={(photo) =>
          void saving.save(() => acts.answer(where, ask, answer, { ...kept, photos: [...photos, photo] }))
        }
      />
      <ErrorBox error={saving.error} title="Photo not added" />
    </>
  );
}
