import { sayDue } from "./say-due.ts";
import { useWords } from "#web/language/index.ts";
import { sayDuration } from "#words";
import type { Due } from "../calls/due.ts";
import { sayClock } from "../sheet/say.ts";

interface DueWordsProps {
  readonly due: Due;
  /** [ms] */
  readonly now: number;
}

/** "Sound at 16:49, in 4:59", "Sound now, 2:10 over". */
export function DueWords({ due, now }: DueWordsProps) {
  const words = useWords("sheetTop");
  const left = (due.at - now) / 1000;
  return (
    <>
      <strong>{sayDue(due, words)}</strong>{" "}
      <span className="tabular" role="timer" aria-live="off">
        {left <= 0
          ? words.nowOver({ duration: sayDuration(-left, "face") })
          : words.atIn({ time: sayClock(due.at), duration: sayDuration(left, "face") })}
      </span>
    </>
  );
}
