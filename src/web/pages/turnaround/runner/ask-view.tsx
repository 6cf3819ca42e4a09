import { Prose } from "#web/parts/prose.tsx";
import { useEffect, useState } from "react";
import { clockAt, dateWantedBy, isShare, recordedFor } from "#readiness";
import { useWords, withParts } from "#web/language/index.ts";
import { ErrorBox, TextField, Timestamp } from "#web/parts/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { useNow } from "#web/timing/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { AnswerBar } from "#web/act/answer-bar.tsx";
import { Afterwards } from "../afterwards/afterwards-note.tsx";
import { AnsweredPanel } from "./answered-panel.tsx";
import { nameOf, type OpenKit } from "#web/kit-view/at-hand.ts";
import { FindingSheet } from "../answer/finding-sheet.tsx";
import type { Ask, Line } from "#web/act/lines.ts";
import { NotPossible } from "#web/act/not-possible.tsx";
import { lastTime, sayLimits, writeValue } from "#web/act/reading.ts";
import { ReadingFields } from "#web/act/reading-fields.tsx";
import type { PickedMode } from "#web/act/finding-choice.ts";
import { oneTapOf, type OneTap } from "#web/act/one-tap.ts";
import { renewedWith, sayNew } from "../answer/renewals.ts";
import { assembleReading, isSaid, type Reading, type Typed } from "#web/act/typed-reading.ts";
import { useAnswering, type Answering, type Answers } from "../answer/use-answering.ts";
import { isFirstMeasured, isMeasuredBefore, knownAt } from "./look-group.ts";
import { whyNotReadYet } from "./step-gate.ts";
import { useFocusIfLost } from "./use-focus-if-lost.ts";
import { useAskDraft, type KeptDraft } from "#web/act/use-ask-draft.ts";

interface AskViewProps extends Answering {
  /** Once answered the line stays on the screen, for what it offers then; the way on is a tap. */
  readonly isStaying: boolean;
  /** A finding that grounds the kit was raised just now from what was measured at the line. */
  readonly isGrounded: boolean;
}

/** One thing asked: what to look at, what right looks like, last time, the reading, and the three answers. */
export function AskView(props: AskViewProps) {
  const { open, line, ask } = props;
  const words = useWords("turnaroundLine");
  const act = useWords("act");
  const { units } = usePreferences();
  const timer = clockAt(open, line.step.id);
  const early = whyNotReadYet(line.step, timer, { now: useNow(timer?.started !== undefined), words });
  const kept = useReadInTime(useAskDraft(open.turnaround.id, ask.key), early !== undefined);
  const [again, setAgain] = useState(false);
  const recorded = recordedFor(ask.check, open.kit, open.turnaround);
  const { pattern, view } = open;
  const wanted = ask.check ? dateWantedBy(ask.check, pattern, view.policy, view.today) : view.today;
  const around = { today: view.today, units, timer, recorded, wanted };
  const isWorkedOut = isShare(pattern, line.step.id, ask.check);
  const typed = isWorkedOut ? workedOut(open, line.step.id) : kept.draft.typed;
  const reading = assembleReading(ask.check, typed, around, act);
  const [isGrounding, setGrounding] = useState(false);
  const onAnswered = () => {
    setAgain(false);
    if (!props.isStaying) props.onAnswered();
  };
  const onRaised = ({ effect }: PickedMode) => {
    setGrounding(effect === "grounds");
    if (effect !== "grounds") onAnswered();
  };
  const oneTap = oneTapOf(ask.check, typed, knownAt(open, line.step.id, ask.check), act);
  const answers = useAnswering({ ...props, onAnswered }, reading, kept, oneTap);
  const isNew = sayNew(renewedWith(open, line, [ask]), words);
  const section = useFocusIfLost<HTMLElement>();
  return (
    <section ref={section} tabIndex={-1} className="ask" aria-label={ask.check ? words.check() : words.answer()}>
      <AskWords ask={ask} />
      <LastTime open={open} step={line.step.id} ask={ask} />
      {isFirstMeasured(open, line.step.id, ask) && (
        <p className="ask-last">
          <strong>{words.noneOnRecord()}</strong>
        </p>
      )}
      {ask.answered && !again ? (
        <AnsweredPanel
          {...props}
          answered={ask.answered}
          isRaised={isGrounding || props.isGrounded}
          onAgain={() => setAgain(true)}
          onRaise={answers.openSheet}
          onNext={props.onAnswered}
        />
      ) : (
        <ToAnswer
          ask={ask}
          line={line}
          kept={kept}
          isWorkedOut={isWorkedOut}
          early={early}
          reading={reading}
          oneTap={oneTap}
          isNew={isNew}
          answers={answers}
        />
      )}
      {answers.sheet && (
        <FindingSheet {...props} answer={answers.sheet.entry} onRaised={onRaised} onClose={answers.closeSheet} />
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

/** The share that was worked out last at a step from what was measured there, as if typed. */
function workedOut({ turnaround }: OpenKit, id: string): Typed {
  const last = turnaround.measured.findLast(({ step }) => step === id);
  return last ? { quantity: `${Math.round(1000 * last.ratio) / 10} %` } : {};
}

interface ToAnswerProps {
  readonly ask: Ask;
  readonly line: Line;
  readonly kept: KeptDraft;
  /** It is worked out from what was measured at the line, and not typed. */
  readonly isWorkedOut: boolean;
  /** Why it cannot be read yet: the reading is the one at the end of the wait. */
  readonly early: string | undefined;
  readonly reading: Reading;
  readonly oneTap: OneTap | undefined;
  /** What is fitted new with the answer, in words that follow it. */
  readonly isNew: string;
  readonly answers: Answers;
}

/** Reading, note and photos, then the answers. */
function ToAnswer({ ask, line, kept, isWorkedOut, early, reading, oneTap, isNew, answers }: ToAnswerProps) {
  const words = useWords("turnaroundLine");
  const [asksWhy, setAsksWhy] = useState(false);
  return (
    <>
      {ask.check && !isWorkedOut && early === undefined && (
        <ReadingFields check={ask.check} kept={kept} reading={reading} />
      )}
      {early !== undefined && isRead(ask.check) && <p className="quiet">{words.readWhenOver({ why: early })}</p>}
      <ErrorBox error={answers.saving.error} title={words.notSaved()} />
      <Afterwards line={line} asks={[ask]} />
      <AnswerBar
        check={ask.check}
        reading={reading}
        oneTap={oneTap}
        isNew={isNew}
        held={answers.held}
        refusal={sayRefusal(answers, reading)}
        onSeen={() => void answers.onSeen()}
        onWrong={() => void answers.onWrong()}
        onNotPossible={() => setAsksWhy(true)}
      />
      <Extras kept={kept} />
      {asksWhy && <NotPossible onClose={() => setAsksWhy(false)} onSave={(why) => void answers.onNotPossible(why)} />}
    </>
  );
}

/** What a reading means is said beside it, and not a second time at the answers. */
function sayRefusal({ refusal }: Answers, reading: Reading): string | undefined {
  return refusal !== undefined && !isSaid(reading, refusal) ? refusal : undefined;
}

function isRead(check: Ask["check"]): boolean {
  return check !== undefined && check.kind !== "look" && check.kind !== "prove";
}

function AskWords({ ask }: { readonly ask: Ask }) {
  const words = useWords("turnaroundLine");
  const act = useWords("act");
  const { units } = usePreferences();
  if (!ask.check) return null;
  const limits = sayLimits(ask.check, { units, words: act });
  return (
    <>
      <p className="ask-do">{ask.check.ask}</p>
      <p className="ask-expect">
        {withParts(words.rightIs, { expected: <Prose text={ask.check.expect} /> })}
        {limits !== undefined && <strong className="ask-limits"> {words.limit({ limit: limits })}</strong>}
      </p>
    </>
  );
}

/** What was read here the last time, to compare with; of what is measured when new, that it is only looked at now. */
function LastTime({ open, step, ask }: { readonly open: OpenKit; readonly step: string; readonly ask: Ask }) {
  const { units } = usePreferences();
  const words = useWords("turnaroundLine");
  const parts = useWords("parts");
  const last = lastTime(open.kit.turnarounds, ask.key);
  if (!last?.value) return null;
  const isKept = isMeasuredBefore(open, step, ask.check);
  const say = isKept ? words.measuredThen : words.lastTime;
  return (
    <p className="ask-last">
      {withParts((part) => say({ ...part, person: nameOf(open.view, last.mark.by) }), {
        value: <strong className="tabular">{writeValue(last.value, parts, units)}</strong>,
        at: <Timestamp at={last.mark.at} as="day" />,
      })}
    </p>
  );
}

/** A note and photos to go with the answer; kept at once, also before there is one. */
function Extras({ kept }: { readonly kept: KeptDraft }) {
  const { note, photos } = kept.draft;
  const words = useWords("turnaroundLine");
  return (
    <details className="extras" open={note !== "" || photos.length > 0}>
      <summary>{words.noteOrPhotoHere()}</summary>
      <TextField label={words.note()} value={note} onChange={(text) => kept.change({ note: text })} isLong />
      <PhotoStrip
        photos={photos}
        label={words.photoOfLine()}
        onAdd={(photo) => kept.change({ photos: [...photos, photo] })}
      />
    </details>
  );
}
