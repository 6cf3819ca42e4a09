import { sayDuration } from "#words";
import type { Due } from "../calls/due.ts";
import { sayClock } from "../sheet/say.ts";

interface DueWordsProps {
  readonly due: Due;
  /** [ms] */
  readonly now: number;
}

/** "Sound at 16:49, in 4:59", "Sound now, 2:10 over". */
export function DueWords({ due: { words, at }, now }: DueWordsProps) {
  const left = (at - now) / 1000;
  return (
    <>
      <strong>{words}</strong>{" "}
      <span className="tabular" role="timer" aria-live="off">
        {left <= 0 ? `now, ${sayDuration(-left, "face")} over` : `at ${sayClock(at)}, in ${sayDuration(left, "face")}`}
      </span>
    </>
  );
}
