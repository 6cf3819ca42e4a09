import { clockAt } from "#readiness";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ErrorBox, GloveRow } from "#web/parts/index.ts";
import { readTimer, alarm, useNow } from "#web/timing/index.ts";
import { sayDuration } from "#words";
import type { AtStep } from "../runner/at-step.ts";
import { secondsNamed } from "../second/use-seconds.ts";
import { useSaving } from "#web/act/use-saving.ts";

/** A thing timed from start to finish, whose seconds are the check's reading. */
export function TimedClock({ open, acts, step }: AtStep) {
  const saving = useSaving(secondsNamed(open.turnaround));
  const words = useWords("turnaroundLine");
  const state = clockAt(open, step.id);
  const started = state?.started;
  const now = useNow(started !== undefined);
  const where = { turnaround: open.turnaround.id, step: step.id };
  const start = () => {
    alarm.arm();
    void saving.save(() => acts.startTimer(where));
  };
  const stop = (since: string) => {
    const { seconds } = readTimer(since, Date.now(), 0);
    void saving.save(() => acts.stopTimer(where, { started: since, seconds, reached: true }));
  };
  return (
    <section className="clock" aria-label={words.timing()}>
      {started !== undefined && (
        <p className="clock-face tabular" role="timer" aria-live="off">
          {sayDuration(readTimer(started, now, 0).seconds, "face")}
        </p>
      )}
      {state?.seconds !== undefined && (
        <p>{withParts(words.timed, { time: <strong>{sayDuration(state.seconds)}</strong> })}</p>
      )}
      <GloveRow>
        {started === undefined ? (
          <Button kind="primary" onPress={start}>
            {state?.seconds === undefined ? words.startTiming() : words.timeAgain()}
          </Button>
        ) : (
          <Button kind="primary" onPress={() => stop(started)}>
            {words.finish()}
          </Button>
        )}
      </GloveRow>
      <ErrorBox error={saving.error} title={words.notSaved()} />
    </section>
  );
}
