import { sayChance, sayFlowSpread } from "#words";
import type { KitsNeededAnswer } from "#questions";
import { ErrorBox, Section } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { sayArrival, sayKitCount, type KitsWords } from "./before-launch-words.ts";
import { Estimate } from "../word/estimate.tsx";
import { KitsInOrder } from "./kits-in-order.tsx";
import type { Way } from "./our-boat.ts";
import { WayLine } from "./way-line.tsx";
import type { KitsAtHand } from "./usable-kits.ts";
import type { Asked } from "../word/use-asked.ts";

interface KitsAnswerProps {
  readonly asked: Asked<KitsNeededAnswer>;
  /** The answer in words. */
  readonly words: KitsWords | undefined;
  readonly way: Way;
  readonly atHand: KitsAtHand;
}

/** How many kits, which, and what that rests on; an answer to what was told before is not kept beside a fault. In the page before it has anything to say, so that it is read out when it has. */
export function KitsAnswer({ asked, words, way, atHand }: KitsAnswerProps) {
  const { error, isComputing } = asked;
  const answer = error === undefined ? asked.answer : undefined;
  return (
    <section className="launch-answer" aria-label="Answer" aria-busy={isComputing}>
      <WayLine way={way} />
      {answer && words ? (
        <Words answer={answer} words={words} atHand={atHand} />
      ) : (
        error === undefined && (
          <p className="quiet">{isComputing ? "Computing…" : "The distance gives the first answer."}</p>
        )
      )}
      <ErrorBox error={error} title="No answer" />
      {answer && <Details answer={answer} />}
    </section>
  );
}

interface WordsProps extends Pick<KitsAnswerProps, "atHand"> {
  readonly answer: KitsNeededAnswer;
  readonly words: KitsWords;
}

function Words({ answer, words, atHand }: WordsProps) {
  const { units } = usePreferences();
  return (
    <>
      <p>
        {words.why} {words.fuel}
      </p>
      {words.short !== undefined && (
        <p>
          <strong>{words.short}</strong>
        </p>
      )}
      <KitsInOrder answer={answer} atHand={atHand} />
      <p>
        Inflow about <strong>{sayFlowSpread(answer.inflow, units)}</strong>. {sayArrival(answer)}
      </p>
      {answer.riseBeyondHole && (
        <p>The rise told is more than the hole told can give: there is a larger one, or another. Ask again.</p>
      )}
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
      <Lines title="Read to her skipper, in this order" of={answer.orders} />
      <Lines title="Ask the skipper, in this order" of={answer.ask} />
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

function Lines({ title, of }: { readonly title: string; readonly of: readonly string[] }) {
  return (
    <Section title={title}>
      <ol className="launch-ask">
        {of.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ol>
    </Section>
  );
}
