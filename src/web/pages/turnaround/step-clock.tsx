import { checkNamed } from "#kit";
import type { AtStep } from "./at-step.ts";
import { PrimeClock } from "./prime-clock.tsx";
import { PullCounter } from "./pull-counter.tsx";
import { TimedClock } from "./timed-clock.tsx";
import { WaitClock } from "./wait-clock.tsx";

/** The clock or counter a step has, if it has one. */
export function StepClock(props: AtStep) {
  const { step, open } = props;
  if (step.timer?.kind === "pulls") return <PullCounter {...props} timer={step.timer} />;
  if (step.timer?.kind === "prime") return <PrimeClock {...props} timer={step.timer} />;
  if (step.timer) return <WaitClock {...props} timer={step.timer} />;
  const isTimed = step.checks.some((id) => checkNamed(open.pattern, id)?.kind === "timed");
  return isTimed ? <TimedClock {...props} /> : null;
}
