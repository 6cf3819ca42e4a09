import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { TimerState } from "../state.ts";

/* Waits, runs, counts and primes of a turnaround, by step. */

interface Timed {
  readonly turnaround: string;
  readonly step: string;
}

/** What is known of it so far. */
export function timerOf(draft: KitDraft, { turnaround, step }: Timed, entry: Entry): TimerState {
  return draft.turnaround(turnaround, entry).timers[step] ?? { mark: markOf(entry) };
}

/** Keeps what is known of it from here on. */
export function putTimer(draft: KitDraft, { turnaround, step }: Timed, timer: TimerState, entry: Entry): void {
  const writable = draft.turnaround(turnaround, entry);
  const timers = draft.part(writable.timers as Record<string, TimerState>);
  timers[step] = timer;
  writable.timers = timers;
}

/** Ends a wait, run, count or prime; two devices that measured the same thing apart, differently, differ. */
export function stopTimer(draft: KitDraft, timed: Timed, found: Partial<TimerState>, entry: Entry): void {
  const { started: _started, ...before } = timerOf(draft, timed, entry);
  const fields = ["seconds", "reached", "pulls"] as const;
  const differs = fields.some((field) => before[field] !== undefined && before[field] !== found[field]);
  if (differs && draft.isBlindTo(before.mark, entry)) {
    const { turnaround, step } = timed;
    const about = "The same line was timed or counted differently on two devices.";
    draft.differ({ what: "timer", about, turnaround, step }, [before.mark, markOf(entry)]);
  }
  putTimer(draft, timed, { ...before, ...found, mark: markOf(entry) }, entry);
}

/** Notes a finding that grounds beside every clock that runs in the open turnaround: the engine may have to stop for it. */
export function noteMeanwhile(draft: KitDraft, finding: string): void {
  const open = draft.kit.turnaround && draft.knownTurnaround(draft.kit.turnaround.id);
  if (!open) return;
  const running = Object.entries(open.timers).filter(([, { started }]) => started !== undefined);
  if (running.length === 0) return;
  const timers = draft.part(open.timers as Record<string, TimerState>);
  for (const [step, timer] of running) timers[step] = { ...timer, meanwhile: [...(timer.meanwhile ?? []), finding] };
  open.timers = timers;
}
