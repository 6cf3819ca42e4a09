import type { OnSceneAnswer } from "#questions";
import { refuelsDue } from "#readiness";
import { sayElapsed } from "../../parts/index.ts";
import { useNow } from "../../timing/index.ts";
import { instantOn } from "./on-scene-question.ts";
import { sayClock } from "./say.ts";
import { useSheet } from "./use-sheet.ts";

/** What is due next, by the wall clock: the next sounding, and each refuelling. */
export function DueStrip({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const { casualty } = useSheet();
  const now = useNow(true);
  const sounding = answer?.reading && instantOn(casualty, answer.reading.nextSounding);
  return (
    <ul className="due" aria-label="Due next">
      {sounding !== undefined && <Due words="Sound" at={sounding} now={now} />}
      {refuelsDue(casualty, now).map(({ pump, name, at }) => (
        <Due key={pump} words={`Refuel ${name}`} at={at} now={now} />
      ))}
    </ul>
  );
}

function Due({ words, at, now }: { readonly words: string; readonly at: number; readonly now: number }) {
  const left = (at - now) / 1000;
  return (
    <li className={left <= 0 ? "due-over" : ""}>
      <strong>{words}</strong>{" "}
      <span className="tabular" role="timer" aria-live="off">
        {left <= 0 ? `now, ${sayElapsed(-left)} over` : `at ${sayClock(at)}, in ${sayElapsed(left)}`}
      </span>
    </li>
  );
}
