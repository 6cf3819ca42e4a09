import type { StepTimer } from "#kit";
import { Button, ErrorBox, GloveRow, sayElapsed } from "../../../parts/index.ts";
import { readTimer, sayDuration, alarm, useNow } from "../../../timing/index.ts";
import type { AtStep } from "../runner/at-step.ts";
import { sayLeft } from "../../../act/timers.ts";
import { useSaving } from "../../../act/use-saving.ts";

interface WaitClockProps extends AtStep {
  readonly timer: StepTimer & { readonly kind: "wait" | "run" };
}

/** A wait or run of at least so long, counted down from the instant it was started. */
export function WaitClock({ open, acts, step, timer }: WaitClockProps) {
  const saving = useSaving();
  const state = open.turnaround.timers[step.id];
  const now = useNow(state?.started !== undefined);
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
    <section className="clock" aria-label={timer.kind === "wait" ? "Wait" : "Run"}>
      {timer.kind === "run" && timer.says !== undefined && <p>{timer.says}</p>}
      {started === undefined ? (
        <Stopped state={state} timer={timer} onStart={start} />
      ) : (
        <Counting elapsed={readTimer(started, now, timer.atLeast)} onStop={() => stop(started)} />
      )}
      <ErrorBox error={saving.error} title="Not saved" />
    </section>
  );
}

interface StoppedProps {
  readonly state: { readonly seconds?: number; readonly reached?: boolean } | undefined;
  readonly timer: WaitClockProps["timer"];
  readonly onStart: () => void;
}

function Stopped({ state, timer, onStart }: StoppedProps) {
  const length = sayDuration(timer.atLeast);
  if (state?.seconds === undefined) {
    return (
      <Button kind="primary" wide onPress={onStart}>
        Start the {length} {timer.kind}
      </Button>
    );
  }
  return (
    <>
      <p>
        <strong>{sayDuration(state.seconds)}</strong> timed, {state.reached ? "long enough" : `less than ${length}`}.
      </p>
      {!state.reached && (
        <Button kind="primary" wide onPress={onStart}>
          Start the {length} {timer.kind} again
        </Button>
      )}
    </>
  );
}

interface CountingProps {
  readonly elapsed: ReturnType<typeof readTimer>;
  readonly onStop: () => void;
}

function Counting({ elapsed, onStop }: CountingProps) {
  return (
    <>
      <p className="clock-face tabular" role="timer" aria-live="off">
        {elapsed.reached ? sayElapsed(elapsed.seconds) : sayElapsed(elapsed.left)}
      </p>
      <p className="clock-words" aria-live="polite">
        {elapsed.reached ? `Long enough, ${sayLeft(elapsed)}. The answer below stops the clock.` : sayLeft(elapsed)}
      </p>
      <GloveRow>
        <Button onPress={onStop}>{elapsed.reached ? "Stop the clock" : "Stop early"}</Button>
      </GloveRow>
    </>
  );
}
