import type { OnSceneAnswer } from "#questions";
import { useRef } from "react";
import { ErrorBox, sayCount } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { headlineOf } from "../word/headline.ts";
import { sayClock } from "../sheet/say.ts";
import type { Asked } from "../word/use-asked.ts";
import type { Scene } from "../word/use-scene.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import type { VerdictWords } from "../word/verdict-words.ts";
import { useOutOfSight } from "./use-out-of-sight.ts";
import { VerdictBar } from "./verdict-bar.tsx";
import { VerdictShape } from "./verdict-shape.tsx";
import "./verdict.css";

/** Are we gaining: a word and what it comes to; a tap tells why. In short along the upper edge once out of sight. */
export function VerdictLine({ scene }: { readonly scene: Scene }) {
  const place = useRef<HTMLElement>(null);
  const isAway = useOutOfSight(place);
  const words = useHeadline(scene);
  const { error } = scene.shown;
  return (
    <>
      <section ref={place} className={`verdict verdict-${words?.kind ?? "unknown"}`} aria-label="Are we gaining?">
        <output className="for-readers-only">{words && `${words.word}: ${words.detail}.`}</output>
        {words ? <Words words={words} scene={scene} /> : <p className="verdict-word">COMPUTING…</p>}
        {error !== undefined && scene.shown.at !== undefined && (
          <p className="verdict-old">OLD, of {sayClock(scene.shown.at)}</p>
        )}
        <ErrorBox error={error} title="Not computed" />
      </section>
      {isAway && words && <VerdictBar words={words} />}
    </>
  );
}

function useHeadline({ shown: { answer, error }, freshness }: Scene): VerdictWords | undefined {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  return headlineOf({ answer, error, freshness, isFuelSmelt: casualty.fuelSmelt !== undefined, units });
}

interface WordsProps {
  readonly words: VerdictWords;
  readonly scene: Scene;
}

/** The word and its line; opened, what it rests on. */
function Words({ words, scene: { shown, isHistory } }: WordsProps) {
  const chance = words.chance === "" ? "" : `Chance ${words.chance}. `;
  return (
    <details>
      <summary>
        <span className="verdict-word">
          <VerdictShape kind={words.kind} />
          {words.word}
        </span>
        <span className="verdict-detail">{words.detail}</span>
      </summary>
      {(words.why ?? []).map((sentence) => (
        <p key={sentence} className="verdict-age">
          {sentence}
        </p>
      ))}
      <p className="verdict-age">
        {chance}
        {words.kind !== "fuel" && words.kind !== "leave" && !isHistory && sayOrigin(shown)} The person in charge on
        scene decides.
      </p>
    </details>
  );
}

/** How old the line above is, so that an old one is never taken for news. */
function sayOrigin({ at, answer, error, isComputing }: Asked<OnSceneAnswer>): string {
  if (at === undefined || !answer?.reading) return isComputing && error === undefined ? "Computing…" : "";
  const from = sayCount(answer.reading.soundings, "sounding");
  const age = error === undefined ? `At ${sayClock(at)}` : `OLD, of ${sayClock(at)}`;
  return `${age}, from ${from}. ${isComputing ? "Computing anew…" : "An estimate."}`;
}
