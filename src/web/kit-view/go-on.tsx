import { sayDuration } from "#words";
import type { Words } from "#words";
import { useWords } from "../language/index.ts";
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
  const words = useWords("kitLine");
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
    <nav className="go-on" aria-label={words.goOnOpen()}>
      {open.map((one) => (
        <GoOnLink key={one.kit.id} open={one} />
      ))}
    </nav>
  );
}

/** "Go on: Pump 1, line 12, 1:37 left". */
export function GoOnLink({ open }: { readonly open: OpenKit }) {
  const words = useWords("kitLine");
  const { kit, pattern, turnaround, view } = open;
  const line = useMemo(() => resumeAt(listLines(pattern, turnaround), view.device), [pattern, turnaround, view.device]);
  const [timer] = runningTimers(open);
  const now = useNow(timer !== undefined);
  const at = timer?.step.line ?? line;
  const named = { kit: kit.name, where: at === undefined ? words.everyLine() : words.line({ line: at }) };
  return (
    <ButtonLink kind="primary" wide to={`/kit/${kit.id}/turnaround${at === undefined ? "" : `?line=${at}`}`}>
      {timer ? words.goOnClock({ ...named, clock: sayClock(timer, now, words) }) : words.goOn(named)}
    </ButtonLink>
  );
}

function sayClock(timer: RunningTimer, now: number, words: Words["kitLine"]): string {
  if (isHanging(timer)) return sayHanging(limitInstant(timer), now, words);
  const { reached, left, over, seconds } = readRunning(timer, now);
  if (reached) return words.over({ time: sayDuration(over, "face") });
  if (timer.what === "prime") return words.gone({ time: sayDuration(seconds, "face") });
  return words.left({ time: sayDuration(left, "face") });
}
