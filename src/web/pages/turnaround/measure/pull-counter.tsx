import { useEffect, useRef, useState } from "react";
import type { StepTimer } from "#kit";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonLink, ErrorBox, Notice } from "#web/parts/index.ts";
import type { ClockOutcome } from "../answer/use-clock-answer.ts";
import type { AtStep } from "../runner/at-step.ts";
import { sayPulls } from "#web/act/timers.ts";

interface PullCounterProps extends AtStep {
  readonly timer: StepTimer & { readonly kind: "pulls" };
  /** Called once "Started on pull 2" is on the disk. */
  readonly onDone: (outcome: ClockOutcome) => Promise<void>;
}

/** Pulls of the starter, one tap each or all with the start, every tap written down; at the limit the engine needs service. */
export function PullCounter(props: PullCounterProps) {
  const { open, timer, step } = props;
  const words = useWords("turnaroundLine");
  const act = useWords("act");
  const known = open.turnaround.timers[step.id];
  const { pulls, error, count } = useCount(props, known?.pulls ?? 0);
  const started = known?.reached === true;
  const spent = pulls >= timer.atMost && !started;
  return (
    <section className="clock clock-pulls" aria-label={words.pulls()}>
      {pulls > 0 && <p className="clock-face tabular">{pulls}</p>}
      <p className="clock-words" aria-live="polite">
        {started ? words.startedOnPull({ pull: pulls }) : sayPulls(pulls, timer, act)}
      </p>
      {spent && (
        <Notice tone="wrong" title={words.stopPulling()} isNews>
          <p>{words.stopPullingMore()}</p>
        </Notice>
      )}
      {!started && pulls > 0 && open.pattern.troubles !== undefined && (
        <ButtonLink wide to={`/kit/${open.kit.id}/fault?sign=will-not-start&line=${step.line}`}>
          {words.noStartWhy()}
        </ButtonLink>
      )}
      {!started && (
        <>
          {!spent && (
            <Button kind="primary" wide onPress={() => count(pulls + 1, "not-yet")}>
              <span className="pull-button">{words.pull({ pull: pulls + 1 })}</span>
            </Button>
          )}
          <StartedOn pulls={pulls} atMost={timer.atMost} onStart={(on) => count(on, "started")} />
        </>
      )}
      <ErrorBox error={error} title={words.pullNotSaved()} />
    </section>
  );
}

/** Keys for the pull it ran on: a row that a glove can hit. More pulls are counted one by one. */
const MOST_KEYS = 3;

interface StartedOnProps {
  /** Pulls counted so far. */
  readonly pulls: number;
  readonly atMost: number;
  readonly onStart: (pulls: number) => void;
}

/** On which pull it ran, by one tap: none earlier than the pulls counted one by one. */
function StartedOn({ pulls, atMost, onStart }: StartedOnProps) {
  const words = useWords("turnaroundLine");
  const from = Math.max(pulls, 1);
  const length = Math.min(Math.max(atMost - from, 0) + 1, MOST_KEYS);
  const on = Array.from({ length }, (_, at) => from + at);
  return (
    <fieldset className="started-on">
      <legend>{words.startedOn()}</legend>
      {on.map((pull) => (
        <Button key={pull} onPress={() => onStart(pull)} label={words.startedOnLabel({ pull })}>
          {pull}
        </Button>
      ))}
    </fieldset>
  );
}

/** Counts ahead of the disk, so that no quick tap is lost, and writes taps down one after the other. */
function useCount({ acts, open, step, onDone }: PullCounterProps, known: number) {
  const [shown, setShown] = useState(known);
  const [error, setError] = useState<unknown>();
  const queue = useRef(Promise.resolve<unknown>(undefined));
  const waiting = useRef(0);
  useEffect(() => {
    if (waiting.current === 0) setShown(known);
  }, [known]);
  const where = { turnaround: open.turnaround.id, step: step.id };
  const count = (pulls: number, outcome: "started" | "not-yet") => {
    setShown(pulls);
    waiting.current += 1;
    queue.current = queue.current
      .then(() => acts.countPulls(where, pulls, outcome))
      .then(() => (outcome === "started" ? onDone({ kind: "started" }) : undefined))
      .then(() => setError(undefined), setError)
      .finally(() => (waiting.current -= 1));
  };
  return { pulls: shown, error, count };
}
