import { sayDuration } from "#words";
import { useWords } from "#web/language/index.ts";
import { Button, GloveRow } from "#web/parts/index.ts";
import { AlarmCall } from "#web/timing/alarm-call.tsx";
import { useNow, useSounding, useWakeLock } from "#web/timing/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import {
  answeredClocks,
  clockKeyOf,
  isHanging,
  limitInstant,
  readRunning,
  runningTimers,
  sayHanging,
  sayLeft,
  sayReached,
  type RunningTimer,
} from "#web/act/timers.ts";
import { useWatched } from "#web/watched/index.ts";

interface ClocksProps {
  readonly open: OpenKit;
  /** Line on the screen now; its clock is shown there. */
  readonly shown: number | undefined;
  readonly onGoTo: (line: number) => void;
}

/** Every running clock, in sight at whatever line the person is, and the alarm when one reaches its limit. */
export function Clocks({ open, shown, onGoTo }: ClocksProps) {
  const words = useWords("turnaround");
  const timers = runningTimers(open);
  const now = useNow(timers.length > 0);
  const wake = useWakeLock(timers.some((timer) => !isHanging(timer)));
  const answered = useWatched(answeredClocks);
  if (timers.length === 0) return null;
  const elsewhere = timers.filter((timer) => timer.step.line !== shown);
  const calling = timers.find((timer) => readRunning(timer, now).reached && !answered.includes(clockKeyOf(timer)));
  return (
    <>
      {(elsewhere.length > 0 || wake === "refused") && (
        <aside className="clocks" aria-label={words.clocks()}>
          {elsewhere.map((timer) => (
            <ClockStrip key={clockKeyOf(timer)} timer={timer} now={now} onGoTo={onGoTo} />
          ))}
          {wake === "refused" && <p className="clocks-wake">{words.screenDark()}</p>}
        </aside>
      )}
      {calling && calling.step.line === shown && <Sounding key={clockKeyOf(calling)} />}
      {calling && calling.step.line !== shown && (
        <AlarmPanel
          timer={calling}
          now={now}
          onAnswer={() => {
            answeredClocks.set([...answered, clockKeyOf(calling)]);
            onGoTo(calling.step.line);
          }}
        />
      )}
    </>
  );
}

interface ClockStripProps {
  readonly timer: RunningTimer;
  readonly now: number;
  readonly onGoTo: (line: number) => void;
}

function ClockStrip({ timer, now, onGoTo }: ClockStripProps) {
  const words = useWords("turnaround");
  if (isHanging(timer)) return <HangingStrip timer={timer} now={now} onGoTo={onGoTo} />;
  const elapsed = readRunning(timer, now);
  const face = elapsed.reached ? elapsed.over : timer.what === "prime" ? elapsed.seconds : elapsed.left;
  const say = elapsed.reached ? words.timeOver : timer.what === "prime" ? words.timeGone : words.timeLeft;
  return (
    <p className="clocks-strip">
      <button type="button" className="clocks-link" onClick={() => onGoTo(timer.step.line)}>
        {words.clockAt({ what: timer.what, line: timer.step.line })}
      </button>
      <span role="timer" aria-live="off" className="tabular">
        {say({ time: sayDuration(face, "face") })}
      </span>
    </p>
  );
}

function HangingStrip({ timer, now, onGoTo }: ClockStripProps) {
  const lineWords = useWords("kitLine");
  const words = useWords("turnaround");
  return (
    <p className="clocks-strip">
      <button type="button" className="clocks-link" onClick={() => onGoTo(timer.step.line)}>
        {words.line({ line: timer.step.line })}
      </button>
      <span className="tabular">{sayHanging(limitInstant(timer), now, lineWords)}</span>
    </p>
  );
}

interface AlarmPanelProps {
  readonly timer: RunningTimer;
  readonly now: number;
  readonly onAnswer: () => void;
}

/** The line it is about is on the screen: it sounds on until that line is answered or its clock stopped. */
function Sounding() {
  useSounding();
  return null;
}

/** Calls over the whole screen until it is answered; the answer leads to the line it is about. */
function AlarmPanel({ timer, now, onAnswer }: AlarmPanelProps) {
  const words = useWords("turnaround");
  const act = useWords("act");
  const elapsed = readRunning(timer, now);
  return (
    <AlarmCall
      title={sayReached(timer, act)}
      face={elapsed.over < 1 ? sayDuration(elapsed.seconds, "face") : sayLeft(elapsed, act)}
    >
      <GloveRow>
        <Button kind="primary" wide onPress={onAnswer}>
          {words.stopAlarm({ line: timer.step.line })}
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}
