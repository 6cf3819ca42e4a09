import { sayCount } from "#base";
import { isLeftAlone, type Pattern, type Step, type StepTimer } from "#kit";
import { clockAt, type AtClock } from "#readiness";
import { sayUntil } from "../parts/words/say-time.ts";
import { type Elapsed, readTimer } from "../timing/index.ts";
import { sayDuration, type Words } from "#words";
import { Watched } from "../watched/index.ts";

/** A clock that runs in a turnaround, at whatever line the person now is. */
export interface RunningTimer {
  readonly step: Step;
  readonly started: string;
  /** Seconds after which the person is called: a wait or run is over, a prime has taken too long. */
  readonly limit: number;
  readonly what: "wait" | "run" | "prime" | "timed";
}

/** Every clock running in a turnaround, in the pattern's order; one that a finding ended runs no more. */
export function runningTimers(at: AtClock): readonly RunningTimer[] {
  const steps = at.pattern.stages.flatMap((stage) => stage.steps);
  return steps.flatMap((step) => {
    const started = clockAt(at, step.id)?.started;
    return started === undefined ? [] : [{ step, started, ...limitOf(step, at.pattern) }];
  });
}

/** Clocks, by {@link clockKeyOf}, whose call was answered in this window: they run on, and call no more. */
export const answeredClocks = new Watched<readonly string[]>([]);

export function clockKeyOf({ step, started }: RunningTimer): string {
  return `${step.id} ${started}`;
}

/** When a clock reaches its limit [ms]. */
export function limitInstant({ started, limit }: RunningTimer): number {
  return Date.parse(started) + 1000 * limit;
}

function limitOf(step: Step, pattern: Pattern): Pick<RunningTimer, "limit" | "what"> {
  const timer = step.timer;
  if (timer?.kind === "prime") return { limit: timer.atMost, what: "prime" };
  if (timer?.kind === "wait" || timer?.kind === "run") return { limit: timer.atLeast, what: timer.kind };
  const timed = pattern.checks.find((check) => check.kind === "timed" && step.checks.includes(check.id));
  const limit = timed?.kind === "timed" ? (timed.atMost ?? timed.atLeast ?? 0) : 0;
  return { limit, what: "timed" };
}

/** What to say aloud when a clock reaches its limit. */
export function sayReached(timer: RunningTimer): string {
  const words: Readonly<Record<RunningTimer["what"], string>> = {
    wait: `The wait at line ${timer.step.line} is over.`,
    run: `The run at line ${timer.step.line} has lasted long enough.`,
    prime: "No water yet: stop and look for air leaks.",
    timed: `Line ${timer.step.line} has reached its limit.`,
  };
  return words[timer.what];
}

/** True where nobody stands by it: no alarm is waited for, and the screen may go dark. */
export function isHanging({ step }: Pick<RunningTimer, "step">): boolean {
  return isLeftAlone(step);
}

/** "hanging until 08:00 tomorrow", "has hung long enough". */
export function sayHanging(until: number, now: number, words: Words["kitLine"]): string {
  return now < until ? words.hangingUntil({ until: sayUntil(until, now, words) }) : words.hungEnough();
}

/** How a clock stands, in words: what is left, or how far past. */
export function sayLeft(elapsed: Elapsed): string {
  if (!elapsed.reached) return `${sayDuration(elapsed.left)} left`;
  return elapsed.over < 1 ? "reached" : `${sayDuration(elapsed.over)} over`;
}

/** A clock as it stands at an instant. */
export function readRunning(timer: RunningTimer, now: number): Elapsed {
  return readTimer(timer.started, now, timer.limit);
}

/** What counted pulls mean against what the engine is allowed. */
export function sayPulls(pulls: number, timer: StepTimer & { readonly kind: "pulls" }): string {
  if (pulls >= timer.atMost) return `${sayCount(pulls, "pull")} and no start: stop. The engine needs service.`;
  if (pulls === 0) return "Tap every pull, then the one it ran on.";
  return `${timer.atMost - pulls} more allowed. Once it runs, tap the pull it ran on.`;
}
