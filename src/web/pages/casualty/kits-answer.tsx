import type { KitsNeededAnswer } from "#questions";
import { Cautions, ErrorBox, Section, Table, type Column } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { sayArrival, sayKits } from "./before-launch.ts";
import { Estimate } from "./estimate.tsx";
import type { OwnKits } from "./own-kits.ts";
import { sayLift, USUAL_LIFT } from "./pump-figures.ts";
import { sayChance, sayFlow, sayFlowSpread } from "./say.ts";
import type { Asked } from "./use-asked.ts";

interface KitsAnswerProps {
  readonly asked: Asked<KitsNeededAnswer>;
  readonly own: OwnKits | undefined;
  readonly ready: number;
}

/** How many kits, and what that rests on; an answer to what was told before is not kept beside a fault. In the page before it has anything to say, so that it is read out when it has. */
export function KitsAnswer({ asked, own, ready }: KitsAnswerProps) {
  const { error, isComputing } = asked;
  const answer = error === undefined ? asked.answer : undefined;
  return (
    <section className="launch-answer" aria-label="Answer" aria-busy={isComputing}>
      {answer ? (
        <Words answer={answer} own={own} ready={ready} />
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

function Words({ answer, own, ready }: { readonly answer: KitsNeededAnswer } & Omit<KitsAnswerProps, "asked">) {
  const { units } = usePreferences();
  const words = sayKits(answer);
  const cans = answer.cans === 0 ? "The tanks last: no cans needed." : `Fuel: ${answer.cans} cans of 5 L.`;
  return (
    <>
      <p>{words.why}</p>
      <p>
        {ready} ready at this station.{" "}
        {own &&
          `Each ${own.pattern.name} moves about ${sayFlow(own.flow, units)} at ${sayLift(USUAL_LIFT, units)} of lift.`}{" "}
        {cans}
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
  { key: "kits", head: "Kits", cell: ({ kits }) => kits },
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
