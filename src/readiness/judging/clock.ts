import { stepNamed, workOf, type Pattern, type Step } from "#kit";
import { forbiddenByFinding } from "../findings/forbidden.ts";
import { isRemedied, proofWanted } from "../findings/finding-list.ts";
import type { Finding, KitState, TimerState, Turnaround } from "../state.ts";

/** A turnaround as its clocks are judged. */
export interface AtClock {
  readonly kit: Pick<KitState, "findings">;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
}

/**
 * The clock of a step as it counts for an answer: none where its wait or run was ended by a finding that forbids what
 * the step does, or where it was over before a remedy that this step's checks are to prove. It begins from nought then.
 */
export function clockAt(at: AtClock, id: string): TimerState | undefined {
  if (endedBy(at, id) || provesNothing(at, id)) return undefined;
  return at.turnaround.timers[id];
}

/** The same for the sealing: a run that was over before a later remedy was made all the same. */
export function clockRun(at: AtClock, id: string): TimerState | undefined {
  return endedBy(at, id) ? undefined : at.turnaround.timers[id];
}

/** The finding, raised while a wait or run went on, for which it had to be stopped. */
export function endedBy({ kit, turnaround, pattern }: AtClock, id: string): Finding | undefined {
  const step = stepNamed(pattern, id);
  const { meanwhile = [] } = turnaround.timers[id] ?? {};
  if (!step || meanwhile.length === 0 || isCount(step)) return undefined;
  const work = workOf(step);
  return kit.findings.find(
    (one) =>
      meanwhile.includes(one.id) && forbiddenByFinding(pattern, one).some((forbidden) => work.includes(forbidden)),
  );
}

/** True where something was done since it was started about a finding that a check of this step is to prove. */
function provesNothing({ kit, turnaround, pattern }: AtClock, id: string): boolean {
  const [step, timer] = [stepNamed(pattern, id), turnaround.timers[id]];
  if (!step || !timer || timer.started !== undefined || isCount(step)) return false;
  return kit.findings.some((finding) => {
    if (finding.closed || !isRemedied(finding)) return false;
    const isProof = proofWanted(finding, pattern).some((check) => step.checks.includes(check.id));
    const done = finding.remedies.findLast(({ remedy }) => remedy.how !== "lived-with");
    return isProof && done !== undefined && done.at > timer.mark.at;
  });
}

/** Pulls and primes are counted as they were: they are over with the start, and with the water. */
function isCount({ timer }: Step): boolean {
  return timer?.kind === "pulls" || timer?.kind === "prime";
}
