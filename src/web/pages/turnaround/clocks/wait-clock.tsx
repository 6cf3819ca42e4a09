import { isLeftAlone, type StepTimer } from "#kit";
import { clockAt, endedBy, runUnderWay } from "#readiness";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ErrorBox, GloveRow, Notice } from "#web/parts/index.ts";
import { readTimer, alarm, useNow } from "#web/timing/index.ts";
import { sayDuration } from "#words";
import type { AtStep } from "../runner/at-step.ts";
import { secondsNamed } from "../second/use-seconds.ts";
import { sayHanging, sayLeft } from "#web/act/timers.ts";
import { useSaving } from "#web/act/use-saving.ts";

interface WaitClockProps extends AtStep {
  readonly timer: StepTimer & { readonly kind: "wait" | "run" };
  readonly onGoTo: (line: number) => void;
}

/** A wait or run of at least so long, counted down from the instant it was started. */
export function WaitClock({ open, acts, step, timer, onGoTo }: WaitClockProps) {
  const lineWords = useWords("kitLine");
  const saving = useSaving(secondsNamed(open.turnaround));
  const words = useWords("turnaroundLine");
  const state = clockAt(open, step.id);
  const now = useNow(state?.started !== undefined || runUnderWay(open, step.id) !== undefined);
  const other = runUnderWay(open, step.id, new Date(now).toISOString());
  const where = { turnaround: open.turnaround.id, step: step.id };
  const start = () => {
    alarm.arm();
    void saving.save(() => acts.startTimer(where));
  };
  const stop = (started: string) => {
    const { seconds, reached } = readTimer(started, Date.now(), timer.atLeast);
    void saving.save(() => acts.stopTimer(where, { started, seconds, reached }));
  };
  const started = state?.started;
  return (
    <section className="clock" aria-label={timer.kind === "wait" ? words.wait() : words.run()}>
      {timer.kind === "run" && timer.says !== undefined && <p>{timer.says}</p>}
      {endedBy(open, step.id) && <p>{words.endedByFinding()}</p>}
      {started === undefined && other ? (
        <OtherRun line={other.line} onGoTo={onGoTo} />
      ) : started === undefined ? (
        <Stopped state={state} timer={timer} onStart={start} />
      ) : (
        <Counting
          elapsed={readTimer(started, now, timer.atLeast)}
          hanging={
            isLeftAlone(step) ? sayHanging(Date.parse(started) + 1000 * timer.atLeast, now, lineWords) : undefined
          }
          onStop={() => stop(started)}
        />
      )}
      <ErrorBox error={saving.error} title={words.notSaved()} />
    </section>
  );
}

/** One engine runs one way at a time: the other run first, and the way to it. */
function OtherRun({ line, onGoTo }: { readonly line: number; readonly onGoTo: (line: number) => void }) {
  const words = useWords("turnaroundLine");
  return (
    <Notice tone="attention" title={words.otherRun({ line })}>
      <p>{words.otherRunMore()}</p>
      <Button wide onPress={() => onGoTo(line)}>
        {words.goToRun({ line })}
      </Button>
    </Notice>
  );
}

interface StoppedProps {
  readonly state: { readonly seconds?: number; readonly reached?: boolean } | undefined;
  readonly timer: WaitClockProps["timer"];
  readonly onStart: () => void;
}

function Stopped({ state, timer, onStart }: StoppedProps) {
  const words = useWords("turnaroundLine");
  const length = sayDuration(timer.atLeast);
  if (state?.seconds === undefined) {
    return (
      <Button kind="primary" wide onPress={onStart}>
        {words.start({ what: timer.kind, length })}
      </Button>
    );
  }
  return (
    <>
      <p>
        {withParts((part) => (state.reached ? words.timedEnough(part) : words.timedLess({ ...part, length })), {
          time: <strong>{sayDuration(state.seconds)}</strong>,
        })}
      </p>
      {!state.reached && (
        <Button kind="primary" wide onPress={onStart}>
          {words.startAgain({ what: timer.kind, length })}
        </Button>
      )}
    </>
  );
}

interface CountingProps {
  /** Where it is left alone: until when, in words. */
  readonly hanging: string | undefined;
  readonly elapsed: ReturnType<typeof readTimer>;
  readonly onStop: () => void;
}

function Counting({ elapsed, hanging, onStop }: CountingProps) {
  const left = sayLeft(elapsed, useWords("act"));
  const words = useWords("turnaroundLine");
  if (hanging !== undefined) return <Hung elapsed={elapsed} hanging={hanging} onStop={onStop} />;
  return (
    <>
      <p className="clock-face tabular" role="timer" aria-live="off">
        {elapsed.reached ? sayDuration(elapsed.seconds, "face") : sayDuration(elapsed.left, "face")}
      </p>
      <p className="clock-words" aria-live="polite">
        {elapsed.reached ? words.longEnough({ left }) : left}
      </p>
      <GloveRow>
        <Button onPress={onStop}>{elapsed.reached ? words.stopClock() : words.stopEarly()}</Button>
      </GloveRow>
    </>
  );
}

/** Left alone for hours: by when, not how many seconds. The kit is not ready until the turnaround is finished. */
function Hung({ elapsed, hanging, onStop }: CountingProps & { readonly hanging: string }) {
  const words = useWords("turnaroundLine");
  return (
    <>
      <p className="clock-words" aria-live="polite">
        <strong>{elapsed.reached ? words.hungEnough() : words.itIs({ hanging })}</strong>{" "}
        {elapsed.reached ? words.lookThenAnswer() : words.leaveHanging()}
      </p>
      <GloveRow>
        <Button onPress={onStop}>{elapsed.reached ? words.stopClock() : words.stopEarly()}</Button>
      </GloveRow>
    </>
  );
}
