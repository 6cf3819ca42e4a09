import { Suspense, useState } from "react";
import type { StepTimer } from "#kit";
import type { Entry } from "#log";
import type { Bodies } from "#readiness";
import { useWords, withParts } from "#web/language/index.ts";
import { fetchedLater } from "#web/loading/index.ts";
import { Button, ErrorBox, GloveRow } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { readTimer, alarm, useNow } from "#web/timing/index.ts";
import { sayDuration } from "#words";
import type { ClockOutcome } from "../answer/use-clock-answer.ts";
import type { AtStep } from "../runner/at-step.ts";
import { useSaving } from "#web/act/use-saving.ts";

const MeasurePrime = fetchedLater(() => import("./measure-prime.tsx"));

interface PrimeClockProps extends AtStep {
  readonly timer: StepTimer & { readonly kind: "prime" };
  /** Called once "Water" is on the disk. */
  readonly onDone: (outcome: ClockOutcome) => Promise<void>;
}

/** A prime, timed from the first stroke to water; at its limit it says to stop and look for air leaks. */
export function PrimeClock(props: PrimeClockProps) {
  const { open, acts, step, timer, onDone } = props;
  const saving = useSaving();
  const words = useWords("turnaroundLine");
  const state = open.turnaround.timers[step.id];
  const where = { turnaround: open.turnaround.id, step: step.id };
  const [around, setAround] = useState<{ readonly lift?: number; readonly strokes?: number }>({});
  const start = () => {
    alarm.arm();
    void saving.save(() => acts.startTimer(where));
  };
  const end = (started: string, primed: boolean) => {
    const { seconds } = readTimer(started, Date.now(), timer.atMost);
    void saving.save(async () => {
      await acts.timePrime(where, { seconds, primed, ...around });
      if (primed && !(await isQuestioned(open, around.lift, seconds))) await onDone({ kind: "water", seconds });
    });
  };
  const started = state?.started;
  return (
    <section className="clock" aria-label={words.prime()}>
      {started === undefined ? (
        <>
          <BeforePrime state={state} timer={timer} onStart={start} onLift={(lift) => setAround(lift)} />
          <PrimeExpected open={open} step={step} lift={around.lift} seconds={state?.seconds} />
        </>
      ) : (
        <Priming
          started={started}
          limit={timer.atMost}
          onEnd={(primed) => end(started, primed)}
          onStrokes={(strokes) => setAround(strokes === undefined ? {} : { ...around, strokes })}
        />
      )}
      <ErrorBox error={saving.error} title={words.notSaved()} />
    </section>
  );
}

/** True where the lift was measured and water came sooner than it can: the line then waits for the person. */
async function isQuestioned({ pattern }: AtStep["open"], lift: number | undefined, seconds: number): Promise<boolean> {
  if (lift === undefined || seconds <= 0) return false;
  const { askPrime, isTooQuick } = await import("#web/rig/prime-words.ts");
  const answer = askPrime(pattern, { lift, observed: seconds });
  return answer !== undefined && !("error" in answer) && isTooQuick(seconds, answer);
}

interface PrimeExpectedProps extends Pick<AtStep, "open" | "step"> {
  readonly lift: number | undefined;
  readonly seconds: number | undefined;
}

/** What is to be expected at the lift entered now, or what the last prime at a known lift says. */
function PrimeExpected({ open, step, lift, seconds }: PrimeExpectedProps) {
  const { kit, turnaround, pattern, view } = open;
  const last = lastPrime(view.entriesOf(`kit:${kit.id}`), turnaround.id, step.id);
  const at = lift ?? last?.lift;
  if (at === undefined) return null;
  return (
    <Suspense fallback={null}>
      <MeasurePrime pattern={pattern} lift={at} {...(seconds !== undefined && at === last?.lift && { seconds })} />
    </Suspense>
  );
}

interface BeforePrimeProps {
  readonly state: { readonly seconds?: number; readonly reached?: boolean } | undefined;
  readonly timer: PrimeClockProps["timer"];
  readonly onStart: () => void;
  readonly onLift: (lift: { readonly lift?: number }) => void;
}

function BeforePrime({ state, timer, onStart, onLift }: BeforePrimeProps) {
  const words = useWords("turnaroundLine");
  const [text, setText] = useState("");
  return (
    <>
      {state?.seconds !== undefined && (
        <p>
          {withParts(state.reached ? words.toWater : words.noWaterAfter, {
            time: <strong>{sayDuration(state.seconds)}</strong>,
          })}
        </p>
      )}
      <details className="extras" open={text !== ""}>
        <summary>{words.liftIfMeasured()}</summary>
        <QuantityField
          label={words.lift()}
          hint={words.liftHint()}
          dimension="length"
          value={text}
          onChange={(typed, reading) => (setText(typed), onLift(reading ? { lift: reading.si } : {}))}
        />
      </details>
      <Button kind="primary" wide onPress={onStart}>
        {state?.seconds === undefined ? words.firstStroke() : words.primeAgain()}
      </Button>
      <p className="quiet">{words.waterWithin({ time: sayDuration(timer.atMost) })}</p>
    </>
  );
}

interface PrimingProps {
  readonly started: string;
  readonly limit: number;
  readonly onEnd: (primed: boolean) => void;
  readonly onStrokes: (strokes: number | undefined) => void;
}

function Priming({ started, limit, onEnd, onStrokes }: PrimingProps) {
  const words = useWords("turnaroundLine");
  const elapsed = readTimer(started, useNow(true), limit);
  return (
    <>
      <p className="clock-face tabular" role="timer" aria-live="off">
        {sayDuration(elapsed.seconds, "face")}
      </p>
      <p className="clock-words">
        {elapsed.reached ? words.airLeaks() : words.left({ time: sayDuration(elapsed.left) })}
      </p>
      {elapsed.reached && <Cautions ids={["never-run-dry"]} />}
      <GloveRow>
        <Button kind="primary" onPress={() => onEnd(true)}>
          {words.water()}
        </Button>
        <Button kind="primary" tone="grave" onPress={() => onEnd(false)}>
          {words.noWater()}
        </Button>
      </GloveRow>
      <details className="extras">
        <summary>{words.strokes()}</summary>
        <NumberField label={words.strokes()} value={undefined} onChange={onStrokes} least={0} />
      </details>
    </>
  );
}

/** The last prime timed at a step of a turnaround, as it was written down. */
function lastPrime(entries: readonly Entry[], turnaround: string, step: string): Bodies["prime-timed"] | undefined {
  return entries
    .filter(({ kind }) => kind === "prime-timed")
    .map(({ body }) => body as Bodies["prime-timed"])
    .findLast((prime) => prime.turnaround === turnaround && prime.step === step);
}
