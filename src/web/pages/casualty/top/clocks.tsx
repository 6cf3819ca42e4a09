import { sayDue } from "./say-due.ts";
import { useWords } from "#web/language/index.ts";
import { sayDuration } from "#words";
import type { Due } from "../calls/due.ts";
import { sayClock } from "../sheet/say.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { useDues } from "./use-dues.ts";
import "./clocks.css";

/** Two clocks, by the wall clock: the next sounding and the next tank; each in its place whether it runs or not. */
export function Clocks() {
  const words = useWords("sheetTop");
  const { casualty } = useSheet();
  const { dues, now } = useDues();
  const soundings = dues.filter(({ task }) => task.kind === "sound");
  const tanks = dues.filter(({ task }) => task.kind === "refuel");
  return (
    <ul className="clocks" aria-label={words.dueNext()}>
      <Clock
        dues={soundings}
        now={now}
        idle={words.sound()}
        face={casualty.soundings.length === 0 ? words.now() : "–"}
      />
      <Clock dues={tanks} now={now} idle={words.refuel()} face="–" />
    </ul>
  );
}

interface ClockProps {
  readonly dues: readonly Due[];
  readonly now: number;
  /** Its name and face while nothing is due. */
  readonly idle: string;
  readonly face: string;
}

/** "Sound, 4:59"; over its time, how long it has been over. */
function Clock({ dues: [due, ...others], now, idle, face }: ClockProps) {
  const words = useWords("sheetTop");
  if (!due) {
    return (
      <li className="clock">
        <span>{idle}</span>
        <span className="clock-face">{face}</span>
      </li>
    );
  }
  const left = (due.at - now) / 1000;
  return (
    <li className={left <= 0 ? "clock clock-over" : "clock"}>
      <span>
        {sayDue(due, words)}
        {others.length > 0 && ` +${others.length}`}
      </span>
      <span className="clock-face" role="timer" aria-live="off">
        {left <= 0 ? words.over({ duration: sayDuration(-left, "face") }) : sayDuration(left, "face")}
        <span className="for-readers-only"> {left <= 0 ? words.now() : words.at({ time: sayClock(due.at) })}</span>
      </span>
    </li>
  );
}
