import { useEffect, useState } from "react";
import { dateWantedBy, recordedFor } from "#readiness";
import { ErrorBox, Notice, TextField, Timestamp } from "#web/parts/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { useNow } from "#web/timing/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { AnswerBar } from "#web/act/answer-bar.tsx";
import { AnsweredPanel } from "./answered-panel.tsx";
import { nameOf, type OpenKit } from "#web/kit-view/at-hand.ts";
import { FindingSheet } from "../answer/finding-sheet.tsx";
import type { Ask } from "#web/act/lines.ts";
import { NotPossible } from "#web/act/not-possible.tsx";
import { lastTime, sayLimits, writeValue } from "#web/act/reading.ts";
import { ReadingFields } from "#web/act/reading-fields.tsx";
import { oneTapOf, type OneTap } from "#web/act/one-tap.ts";
import { renewedWith, sayNew } from "../answer/renewals.ts";
import { assembleReading, isSaid, type Reading } from "#web/act/typed-reading.ts";
import { useAnswering, type Answering, type Answers } from "../answer/use-answering.ts";
import { knownAt } from "./look-group.ts";
import { whyNotReadYet } from "./step-gate.ts";
import { useFocusIfLost } from "./use-focus-if-lost.ts";
import { useAskDraft, type KeptDraft } from "#web/act/use-ask-draft.ts";

interface AskViewProps extends Answering {
  /** Once answered the line stays on the screen, for what it offers then; the way on is a tap. */
  readonly isStaying: boolean;
}

/** One thing asked: what to look at, what right looks like, last time, the reading, and the three answers. */
export function AskView(props: AskViewProps) {
  const { open, line, ask } = props;
  const { units } = usePreferences();
  const timer = open.turnaround.timers[line.step.id];
  const early = whyNotReadYet(line.step, timer, useNow(timer?.started !== undefined));
  const kept = useReadInTime(useAskDraft(open.turnaround.id, ask.key), early !== undefined);
  const [again, setAgain] = useState(false);
  const recorded = recordedFor(ask.check, open.kit, open.turnaround);
  const { pattern, view } = open;
  const wanted = ask.check ? dateWantedBy(ask.check, pattern, view.policy, view.today) : view.today;
  const around = { today: view.today, units, timer, recorded, wanted };
  const reading = assembleReading(ask.check, kept.draft.typed, around);
  const onAnswered = () => {
    setAgain(false);
    if (!props.isStaying) props.onAnswered();
  };
  const oneTap = oneTapOf(ask.check, kept.draft.typed, knownAt(open, line.step.id, ask.check));
  const answers = useAnswering({ ...props, onAnswered }, reading, kept, oneTap);
  const isNew = sayNew(renewedWith(open, line, [ask]));
  const section = useFocusIfLost<HTMLElement>();
  return (
    <section ref={section} tabIndex={-1} className="ask" aria-label={ask.check ? "Check" : "Answer"}>
      <AskWords ask={ask} />
      <LastTime open={open} ask={ask} />
      {ask.answered && !again ? (
        <AnsweredPanel
          {...props}
          answered={ask.answered}
          onAgain={() => setAgain(true)}
          onRaise={answers.openSheet}
          onNext={props.onAnswered}
        />
      ) : (
        <ToAnswer
          ask={ask}
          kept={kept}
          early={early}
          reading={reading}
          oneTap={oneTap}
          isNew={isNew}
          answers={answers}
        />
      )}
      {answers.sheet && (
        <FindingSheet {...props} answer={answers.sheet.entry} onRaised={onAnswered} onClose={answers.closeSheet} />
      )}
    </section>
  );
}

/** What was typed before the wait is over was read too early: it goes, note and photos stay. */
function useReadInTime(kept: KeptDraft, isEarly: boolean): KeptDraft {
  const isTyped = Object.keys(kept.draft.typed).length > 0;
  useEffect(() => {
    if (isEarly && isTyped) kept.change({ typed: {} });
  });
  return isEarly ? { ...kept, draft: { ...kept.draft, typed: {} } } : kept;
}

interface ToAnswerProps {
  readonly ask: Ask;
  readonly kept: KeptDraft;
  /** Why it cannot be read yet: the reading is the one at the end of the wait. */
  readonly early: string | undefined;
  readonly reading: Reading;
  readonly oneTap: OneTap | undefined;
  /** What is fitted new with the answer, in words that follow it. */
  readonly isNew: string;
  readonly answers: Answers;
}

/** Reading, note and photos, then the answers. */
function ToAnswer({ ask, kept, early, reading, oneTap, isNew, answers }: ToAnswerProps) {
  const [asksWhy, setAsksWhy] = useState(false);
  return (
    <>
      {ask.check && early === undefined && <ReadingFields check={ask.check} kept={kept} reading={reading} />}
      {early !== undefined && isRead(ask.check) && <p className="quiet">Read it when the wait is over. {early}</p>}
      {answers.refusal !== undefined && !isSaid(reading, answers.refusal) && (
        <Notice tone="wrong" title={answers.refusal} isNews />
      )}
      <ErrorBox error={answers.saving.error} title="Not saved" />
      <AnswerBar
        check={ask.check}
        reading={reading}
        oneTap={oneTap}
        isNew={isNew}
        held={answers.held}
        onSeen={() => void answers.onSeen()}
        onWrong={() => void answers.onWrong()}
        onNotPossible={() => setAsksWhy(true)}
      />
      <Extras kept={kept} />
      {asksWhy && <NotPossible onClose={() => setAsksWhy(false)} onSave={(why) => void answers.onNotPossible(why)} />}
    </>
  );
}

function isRead(check: Ask["check"]): boolean {
  return check !== undefined && check.kind !== "look" && check.kind !== "prove";
}

function AskWords({ ask }: { readonly ask: Ask }) {
  const { units } = usePreferences();
  if (!ask.check) return null;
  const limits = sayLimits(ask.check, units);
  return (
    <>
      <p className="ask-do">{ask.check.ask}</p>
      <p className="ask-expect">
        Right is: {ask.check.expect}
        {limits !== undefined && <strong className="ask-limits"> Limit: {limits}</strong>}
      </p>
    </>
  );
}

/** What was read here the last time, to compare with. */
function LastTime({ open, ask }: { readonly open: OpenKit; readonly ask: Ask }) {
  const { units } = usePreferences();
  const last = lastTime(open.kit.turnarounds, ask.key);
  if (!last?.value) return null;
  return (
    <p className="ask-last">
      Last time <strong className="tabular">{writeValue(last.value, units)}</strong>,{" "}
      <Timestamp at={last.mark.at} as="day" />, {nameOf(open.view, last.mark.by)}
    </p>
  );
}

/** A note and photos to go with the answer; kept at once, also before there is one. */
function Extras({ kept }: { readonly kept: KeptDraft }) {
  const { note, photos } = kept.draft;
  return (
    <details className="extras" open={note !== "" || photos.length > 0}>
      <summary>Note or photo with this answer</summary>
      <TextField label="Note" value={note} onChange={(text) => kept.change({ note: text })} isLong />
      <PhotoStrip
        photos={photos}
        label="Photo of this line"
        onAdd={(photo) => kept.change({ photos: [...photos, photo] })}
      />
    </details>
  );
}
