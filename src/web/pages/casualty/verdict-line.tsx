import type { OnSceneAnswer } from "#questions";
import { refuelsDue } from "#readiness";
import { useRef } from "react";
import { ErrorBox, sayCount } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { headlineOf } from "./headline.ts";
import { instantOn } from "./on-scene-question.ts";
import { sayClock } from "./say.ts";
import type { Asked } from "./use-asked.ts";
import { useOutOfSight } from "./use-out-of-sight.ts";
import type { Scene } from "./use-scene.ts";
import { useSheet } from "./use-sheet.ts";
import { VerdictBar } from "./verdict-bar.tsx";
import { VerdictShape } from "./verdict-shape.tsx";
import type { VerdictWords } from "./verdict-words.ts";
import "./verdict.css";

/** Are we gaining: one line at the top with its age; in short along the upper edge once it is out of sight. */
export function VerdictLine({ scene }: { readonly scene: Scene }) {
  const place = useRef<HTMLElement>(null);
  const isAway = useOutOfSight(place);
  const words = useHeadline(scene);
  return (
    <>
      <section ref={place} className={`verdict verdict-${words?.kind ?? "unknown"}`} aria-label="Are we gaining?">
        <output className="verdict-words">
          {words ? <Words words={words} /> : <p className="verdict-word">COMPUTING…</p>}
        </output>
        {words?.aside !== undefined && <p className="verdict-age">{words.aside}</p>}
        {words?.kind !== "fuel" && !scene.isHistory && <p className="verdict-age">{sayOrigin(scene.shown)}</p>}
        <ErrorBox error={scene.shown.error} title="Not computed" />
      </section>
      {isAway && words && <VerdictBar words={words} />}
    </>
  );
}

function useHeadline({ shown, freshness, minute }: Scene): VerdictWords | undefined {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { answer, error } = shown;
  const next = answer?.reading?.nextSounding;
  return headlineOf({
    answer,
    error,
    freshness,
    isFuelSmelt: casualty.fuelSmelt !== undefined,
    refuel: refuelsDue(casualty, minute)[0]?.at,
    nextSounding: next === undefined ? undefined : instantOn(casualty, next),
    now: minute,
    units,
  });
}

/** How old the line above is, so that an old one is never taken for news. */
function sayOrigin({ at, answer, error, isComputing }: Asked<OnSceneAnswer>): string {
  if (at === undefined || !answer?.reading) return isComputing && error === undefined ? "Computing…" : "";
  const from = sayCount(answer.reading.soundings, "sounding");
  const age = error === undefined ? `At ${sayClock(at)}` : `OLD, of ${sayClock(at)}`;
  return `${age}, from ${from}. ${isComputing ? "Computing anew…" : "An estimate."}`;
}

function Words({ words }: { readonly words: VerdictWords }) {
  return (
    <>
      <p className="verdict-word">
        <VerdictShape kind={words.kind} />
        {words.word}
      </p>
      <p className="verdict-detail">
        {words.detail}.{words.chance !== "" && <span className="verdict-chance"> Chance {words.chance}.</span>}
      </p>
    </>
  );
}
