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
export function sayReached({ what, step }: RunningTimer, words: Words["act"]): string {
  const { line } = step;
  if (what === "wait") return words.waitOver({ line });
  if (what === "run") return words.runOver({ line });
  return what === "prime" ? words.noWater() : words.timeReached({ line });
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
export function sayLeft(elapsed: Elapsed, words: Words["act"]): string {
  if (!elapsed.reached) return words.left({ time: sayDuration(elapsed.left) });
  return elapsed.over < 1 ? words.reached() : words.over({ time: sayDuration(elapsed.over) });
}

/** A clock as it stands at an instant. */
export function readRunning(timer: RunningTimer, now: number): Elapsed {
  return readTimer(timer.started, now, timer.limit);
}

/** What counted pulls mean against what the engine is allowed. */
export function sayPulls(
  pulls: number,
  { atMost }: StepTimer & { readonly kind: "pulls" },
  words: Words["act"],
): string {
  if (pulls >= atMost) return words.pullsSpent({ count: pulls });
  return pulls === 0 ? words.tapPulls() : words.pullsLeft({ count: atMost - pulls });
}
