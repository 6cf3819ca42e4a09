import type { OnSceneAnswer } from "#questions";
import { refuelsDue } from "#readiness";
import { ErrorBox, sayCount } from "../../parts/index.ts";
import { sayClock } from "./say.ts";
import type { Asked } from "./use-asked.ts";
import { useSheet } from "./use-sheet.ts";
import { sayVerdict, type VerdictWords } from "./verdict-words.ts";

/** Are we gaining: one line, always at the top, with its age. */
export function VerdictLine({ asked, now }: { readonly asked: Asked<OnSceneAnswer>; readonly now: number }) {
  const { casualty } = useSheet();
  const words = asked.answer && sayVerdict(asked.answer, refuelsDue(casualty, now)[0]?.at);
  return (
    <section className={`verdict verdict-${words?.kind ?? "unknown"}`} aria-label="Are we gaining?">
      <output className="verdict-words">
        {words ? <Words words={words} /> : <p className="verdict-word">COMPUTING…</p>}
      </output>
      <p className="verdict-age">{sayAge(asked)}</p>
      <ErrorBox error={asked.error} title="Not computed" />
    </section>
  );
}

/** How old the line above is, so that an old one is never taken for news. */
function sayAge({ at, answer, error, isComputing }: Asked<OnSceneAnswer>): string {
  if (at === undefined || !answer?.reading) return isComputing ? "Computing…" : "";
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

/** Falling, level, rising water: a shape of its own for each, so that colour is not needed. */
function VerdictShape({ kind }: { readonly kind: VerdictWords["kind"] }) {
  return (
    <svg className="verdict-shape" viewBox="0 0 32 32" aria-hidden="true">
      <path d={SHAPES[kind]} fill="currentColor" />
    </svg>
  );
}

const SHAPES: Readonly<Record<VerdictWords["kind"], string>> = {
  gaining: "M13 3h6v14h7L16 30 6 17h7z",
  holding: "M3 11h26v4H3zM3 18h26v4H3z",
  losing: "M13 29h6V15h7L16 2 6 15h7z",
  unknown: "M4 4h24v24H4zM8 8v16h16V8z",
};
