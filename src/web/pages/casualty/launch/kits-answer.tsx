import { useWords, withParts } from "#web/language/index.ts";
import { sayFlowSpread, type Words } from "#words";
import type { KitsNeededAnswer } from "#questions";
import { ErrorBox, Section } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { sayArrival, sayRange, type KitsWords } from "./before-launch-words.ts";
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
  const launch = useWords("launch");
  const { error, isComputing } = asked;
  const answer = error === undefined ? asked.answer : undefined;
  return (
    <section className="launch-answer" aria-label={launch.answer()} aria-busy={isComputing}>
      <WayLine way={way} />
      {answer && words ? (
        <Said answer={answer} words={words} atHand={atHand} />
      ) : (
        error === undefined && <p className="quiet">{isComputing ? launch.computing() : launch.distanceFirst()}</p>
      )}
      <ErrorBox error={error} title={launch.noAnswer()} />
      {answer && <Details answer={answer} />}
    </section>
  );
}

interface WordsProps extends Pick<KitsAnswerProps, "atHand"> {
  readonly answer: KitsNeededAnswer;
  readonly words: KitsWords;
}

function Said({ answer, words, atHand }: WordsProps) {
  const launch = useWords("launch");
  const kits = useWords("launchKits");
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
        {withParts(launch.inflow, {
          flow: <strong>{sayFlowSpread(answer.inflow, units)}</strong>,
          arrival: sayArrival(answer, kits),
        })}
      </p>
      {answer.riseBeyondHole && <p>{launch.riseBeyond()}</p>}
      <p>
        <strong>{words.patch}</strong>
      </p>
    </>
  );
}

type Row = KitsNeededAnswer["byKits"][number];

function columnsOf(words: Words["launch"], counts: Words["launchKits"]): readonly Column<Row>[] {
  return [
    { key: "kits", head: words.kitsHead(), cell: ({ kits }) => counts.kits({ count: kits }) },
    { key: "holding", head: words.hold(), cell: ({ spreads }) => sayRange(spreads.holding, counts) },
    { key: "gaining", head: words.gain(), cell: ({ spreads }) => sayRange(spreads.gaining, counts) },
    { key: "patched", head: words.holdHalved(), cell: ({ spreads }) => sayRange(spreads.holdingPatched, counts) },
  ];
}

function Details({ answer }: { readonly answer: KitsNeededAnswer }) {
  const words = useWords("launch");
  const counts = useWords("launchKits");
  return (
    <>
      <Lines title={words.orders()} of={answer.orders} />
      <Lines title={words.ask()} of={answer.ask} />
      <details className="casualty-more">
        <summary>{words.chances()}</summary>
        <p className="quiet">{words.chancesAre()}</p>
        <Table
          caption={words.chances()}
          isCaptionHidden
          columns={columnsOf(words, counts)}
          rows={answer.byKits}
          rowKey={({ kits }) => String(kits)}
        />
      </details>
      <Estimate assumptions={answer.assumptions} />
      <details className="casualty-more">
        <summary>{words.cautions()}</summary>
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
