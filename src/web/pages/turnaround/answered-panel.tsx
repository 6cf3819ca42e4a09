import type { Finding } from "#readiness";
import { nameFinding } from "../findings/ages.ts";
import { Button, ErrorBox, GloveRow, Notice, PhotoStrip } from "../../parts/index.ts";
import type { OpenKit } from "./at-hand.ts";
import { sayWho } from "./at-hand.ts";
import { sayEffect } from "./finding-choice.ts";
import type { Answered } from "./lines.ts";
import type { Answering } from "./use-answering.ts";
import { useFocusIfLost } from "./use-focus-if-lost.ts";
import { useSaving } from "./use-saving.ts";
import { sayAnswer, sayCard } from "./wording.ts";

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
      {raised.map((finding) => (
        <FindingLine key={finding.id} open={open} finding={finding} />
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

/** Findings this turnaround raised at this ask and not closed since. */
function findingsHere({ kit, turnaround }: OpenKit, step: string, check: string | undefined): readonly Finding[] {
  return kit.findings.filter(
    (one) => one.turnaround === turnaround.id && one.step === step && one.check === check && !one.closed,
  );
}

function FindingLine({ open, finding }: { readonly open: OpenKit; readonly finding: Finding }) {
  const { mode } = nameFinding(finding, open.pattern);
  return (
    <p className="answered-finding">
      Finding: {mode}. {sayEffect(finding.effect, finding.limit)}
    </p>
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
