import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";
import type { OnSceneAnswer } from "#questions";
import { useRef } from "react";
import { ErrorBox } from "#web/parts/index.ts";
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
  const top = useWords("sheetTop");
  const place = useRef<HTMLElement>(null);
  const isAway = useOutOfSight(place);
  const words = useHeadline(scene);
  const { error } = scene.shown;
  return (
    <>
      <section ref={place} className={`verdict verdict-${words?.kind ?? "unknown"}`} aria-label={top.areWeGaining()}>
        <output className="for-readers-only">{words && top.readOut({ word: words.word, detail: words.detail })}</output>
        {words ? <Opened words={words} scene={scene} /> : <p className="verdict-word">{top.computingWord()}</p>}
        {error !== undefined && scene.shown.at !== undefined && (
          <p className="verdict-old">{top.oldOf({ time: sayClock(scene.shown.at) })}</p>
        )}
        <ErrorBox error={error} title={top.notComputed()} />
      </section>
      {isAway && words && <VerdictBar words={words} />}
    </>
  );
}

function useHeadline({ shown: { answer, error }, freshness }: Scene): VerdictWords | undefined {
  const messages = useWords("sheetWord");
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const isFuelSmelt = casualty.fuelSmelt !== undefined;
  return headlineOf({ answer, error, freshness, isFuelSmelt, units }, messages);
}

interface WordsProps {
  readonly words: VerdictWords;
  readonly scene: Scene;
}

/** The word and its line; opened, what it rests on. */
function Opened({ words, scene: { shown, isHistory } }: WordsProps) {
  const top = useWords("sheetTop");
  const isForecast = words.kind !== "fuel" && words.kind !== "leave" && !isHistory;
  const sentences = [
    words.chance === "" ? "" : top.chance({ chance: words.chance }),
    isForecast ? sayOrigin(shown, top) : "",
    top.inCharge(),
  ];
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
      <p className="verdict-age">{sentences.filter((one) => one !== "").join(" ")}</p>
    </details>
  );
}

/** How old the line above is, so that an old one is never taken for news. */
function sayOrigin({ at, answer, error, isComputing }: Asked<OnSceneAnswer>, top: Words["sheetTop"]): string {
  if (at === undefined || !answer?.reading) return isComputing && error === undefined ? top.computing() : "";
  const time = sayClock(at);
  return top.origin({
    age: error === undefined ? top.madeAt({ time }) : top.oldOf({ time }),
    count: answer.reading.soundings,
    state: isComputing ? top.computingAnew() : top.anEstimate(),
  });
}
