import { sayDuration } from "#words";
import { useMemo } from "react";
import { mayWrite } from "#station";
import { listLines } from "../act/lines.ts";
import { resumeAt } from "../act/position.ts";
import { isHanging, limitInstant, readRunning, runningTimers, sayHanging, type RunningTimer } from "../act/timers.ts";
import { useStation } from "../device/index.ts";
import { ButtonLink } from "../parts/index.ts";
import { useNow } from "../timing/index.ts";
import { findKit, withTurnaround, type OpenKit } from "./at-hand.ts";

/** The way back into every turnaround that is open, wherever the app was opened: kit, line, and what its clock has left. */
export function GoOn() {
  const view = useStation();
  const open = useMemo(
    () =>
      view.kits.flatMap(({ id, turnaround }) => {
        const at = turnaround && findKit(view, id);
        const found = at && withTurnaround(at);
        return found ? [found] : [];
      }),
    [view],
  );
  if (open.length === 0 || !mayWrite(view.me.role, "step-answered")) return null;
  return (
    <nav className="go-on" aria-label="Turnarounds that are open">
      {open.map((one) => (
        <GoOnLink key={one.kit.id} open={one} />
      ))}
    </nav>
  );
}

/** "Go on: Pump 1, line 12, 1:37 left". */
export function GoOnLink({ open }: { readonly open: OpenKit }) {
  const { kit, pattern, turnaround, view } = open;
  const line = useMemo(() => resumeAt(listLines(pattern, turnaround), view.device), [pattern, turnaround, view.device]);
  const [timer] = runningTimers(pattern, turnaround);
  const now = useNow(timer !== undefined);
  const at = timer?.step.line ?? line;
  return (
    <ButtonLink kind="primary" wide to={`/kit/${kit.id}/turnaround${at === undefined ? "" : `?line=${at}`}`}>
      Go on: {kit.name}, {at === undefined ? "every line is answered" : `line ${at}`}
      {timer && `, ${sayClock(timer, now)}`}
    </ButtonLink>
  );
}

function sayClock(timer: RunningTimer, now: number): string {
  if (isHanging(timer)) return sayHanging(limitInstant(timer), now);
  const { reached, left, over, seconds } = readRunning(timer, now);
  if (reached) return `${sayDuration(over, "face")} over`;
  return timer.what === "prime" ? `${sayDuration(seconds, "face")} gone` : `${sayDuration(left, "face")} left`;
}
