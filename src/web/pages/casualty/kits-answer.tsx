import type { KitsNeededAnswer } from "#questions";
import { Cautions, ErrorBox, Section, Table, type Column } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { sayArrival, sayKitCount, type KitsWords } from "./before-launch-words.ts";
import { Estimate } from "./estimate.tsx";
import type { OwnKits } from "./own-kits.ts";
import { sayLift, USUAL_LIFT } from "./pump-figures.ts";
import { sayChance, sayFlow, sayFlowSpread } from "./say.ts";
import type { Asked } from "./use-asked.ts";

interface KitsAnswerProps {
  readonly asked: Asked<KitsNeededAnswer>;
  /** The answer in words. */
  readonly words: KitsWords | undefined;
  readonly own: OwnKits | undefined;
  readonly ready: number;
}

/** How many kits, and what that rests on; an answer to what was told before is not kept beside a fault. In the page before it has anything to say, so that it is read out when it has. */
export function KitsAnswer({ asked, words, own, ready }: KitsAnswerProps) {
  const { error, isComputing } = asked;
  const answer = error === undefined ? asked.answer : undefined;
  return (
    <section className="launch-answer" aria-label="Answer" aria-busy={isComputing}>
      {answer && words ? (
        <Words answer={answer} words={words} own={own} ready={ready} />
      ) : (
        error === undefined && (
          <p className="quiet">{isComputing ? "Computing…" : "Kind, length and distance give the first answer."}</p>
        )
      )}
      <ErrorBox error={error} title="No answer" />
      {answer && <Details answer={answer} />}
    </section>
  );
}

interface WordsProps extends Omit<KitsAnswerProps, "asked"> {
  readonly answer: KitsNeededAnswer;
  readonly words: KitsWords;
}

function Words({ answer, words, own, ready }: WordsProps) {
  const { units } = usePreferences();
  return (
    <>
      <p>{words.why}</p>
      <p>
        {words.short === undefined && `${sayKitCount(ready)} ready at this station. `}
        {own &&
          `Each ${own.pattern.name} moves about ${sayFlow(own.flow, units)} at ${sayLift(USUAL_LIFT, units)} of lift.`}{" "}
        {words.fuel}
      </p>
      <p>
        Inflow about <strong>{sayFlowSpread(answer.inflow, units)}</strong>. {sayArrival(answer)}
      </p>
      <p>
        <strong>{words.patch}</strong>
      </p>
    </>
  );
}

type Row = KitsNeededAnswer["byKits"][number];

const COLUMNS: readonly Column<Row>[] = [
  { key: "kits", head: "Kits", cell: ({ kits }) => sayKitCount(kits) },
  { key: "holding", head: "Hold", cell: ({ holding }) => sayChance(holding) },
  { key: "gaining", head: "Gain", cell: ({ gaining }) => sayChance(gaining) },
  { key: "patched", head: "Hold, hole halved", cell: ({ holdingPatched }) => sayChance(holdingPatched) },
];

function Details({ answer }: { readonly answer: KitsNeededAnswer }) {
  return (
    <>
      <Section title="Ask the skipper, in this order">
        <ol className="launch-ask">
          {answer.ask.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ol>
      </Section>
      <details className="casualty-more">
        <summary>Chances by number of kits</summary>
        <Table
          caption="Chances by number of kits"
          isCaptionHidden
          columns={COLUMNS}
          rows={answer.byKits}
          rowKey={({ kits }) => String(kits)}
        />
      </details>
      <Estimate assumptions={answer.assumptions} />
      <details className="casualty-more">
        <summary>Cautions to pass on</summary>
        <Cautions ids={answer.cautions.filter((id) => id !== "estimate")} />
      </details>
    </>
  );
}
