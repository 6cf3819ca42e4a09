import { checkNamed } from "#kit";
import type { ClockOutcome } from "../answer/use-clock-answer.ts";
import type { AtStep } from "../runner/at-step.ts";
import { PrimeClock } from "../measure/prime-clock.tsx";
import { PullCounter } from "../measure/pull-counter.tsx";
import { TimedClock } from "./timed-clock.tsx";
import { WaitClock } from "./wait-clock.tsx";

interface StepClockProps extends AtStep {
  readonly onDone: (outcome: ClockOutcome) => Promise<void>;
  readonly onGoTo: (line: number) => void;
}

/** The clock or counter a step has, if it has one. */
export function StepClock(props: StepClockProps) {
  const { step, open } = props;
  if (step.timer?.kind === "pulls") return <PullCounter {...props} timer={step.timer} />;
  if (step.timer?.kind === "prime") return <PrimeClock {...props} timer={step.timer} />;
  if (step.timer) return <WaitClock {...props} timer={step.timer} />;
  const isTimed = step.checks.some((id) => checkNamed(open.pattern, id)?.kind === "timed");
  return isTimed ? <TimedClock {...props} /> : null;
}
