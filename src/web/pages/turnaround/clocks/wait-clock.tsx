import { isLeftAlone, type StepTimer } from "#kit";
import { Button, ErrorBox, GloveRow } from "#web/parts/index.ts";
import { readTimer, alarm, useNow } from "#web/timing/index.ts";
import { sayDuration } from "#words";
import type { AtStep } from "../runner/at-step.ts";
import { secondsNamed } from "../second/use-seconds.ts";
import { sayHanging, sayLeft } from "#web/act/timers.ts";
import { useSaving } from "#web/act/use-saving.ts";

interface WaitClockProps extends AtStep {
  readonly timer: StepTimer & { readonly kind: "wait" | "run" };
}

/** A wait or run of at least so long, counted down from the instant it was started. */
export function WaitClock({ open, acts, step, timer }: WaitClockProps) {
  const saving = useSaving(secondsNamed(open.turnaround));
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
        <Counting
          elapsed={readTimer(started, now, timer.atLeast)}
          hanging={isLeftAlone(step) ? sayHanging(Date.parse(started) + 1000 * timer.atLeast, now) : undefined}
          onStop={() => stop(started)}
        />
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
  /** Where it is left alone: until when, in words. */
  readonly hanging: string | undefined;
  readonly elapsed: ReturnType<typeof readTimer>;
  readonly onStop: () => void;
}

function Counting({ elapsed, hanging, onStop }: CountingProps) {
  if (hanging !== undefined) return <Hung elapsed={elapsed} hanging={hanging} onStop={onStop} />;
  return (
    <>
      <p className="clock-face tabular" role="timer" aria-live="off">
        {elapsed.reached ? sayDuration(elapsed.seconds, "face") : sayDuration(elapsed.left, "face")}
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

/** Left alone for hours: by when, not how many seconds. The kit is not ready until the turnaround is finished. */
function Hung({ elapsed, hanging, onStop }: CountingProps & { readonly hanging: string }) {
  return (
    <>
      <p className="clock-words" aria-live="polite">
        <strong>{elapsed.reached ? "It has hung long enough." : `It is ${hanging}.`}</strong>{" "}
        {elapsed.reached
          ? "Look at it, then answer below."
          : "Leave it: the turnaround goes on here, on any device. The kit is not ready meanwhile."}
      </p>
      <GloveRow>
        <Button onPress={onStop}>{elapsed.reached ? "Stop the clock" : "Stop early"}</Button>
      </GloveRow>
    </>
  );
}
