import { Link } from "wouter";
import { trendsOf, type Trend } from "#readiness";
import { TrendChart } from "../../../drawing/trend-chart.tsx";
import { EmptyState, Section, Timestamp } from "../../../parts/index.ts";
import { Table, type Column } from "../../../parts/table.tsx";
import type { KitAtHand } from "../../../kit-view/at-hand.ts";
import { CasualtyRuns } from "../after-use/index.ts";
import { KitStart } from "../start/kit-start.tsx";
import { WhatIsBehind } from "./trend-behind.tsx";
import { limitsOf, sayTrend, TREND_WORDS } from "./trend-words.ts";

/** How starts, primes and deliveries have gone over the years, against the pattern's limits. */
export function KitRuns({ at }: { readonly at: KitAtHand }) {
  const trends = trendsOf(at.kit);
  const isNone = at.kit.runs.length === 0;
  return (
    <Section id="runs" title="Runs">
      {!at.kit.retired && <KitStart at={at} />}
      {isNone ? (
        <EmptyState title="Nothing was counted or timed yet">
          <p>Pulls, prime and delivery are taken down in the run of a turnaround, and from the sheet of a casualty.</p>
        </EmptyState>
      ) : (
        <div className="kit-trends">
          {trends.map((trend) => (
            <KitTrend key={trend.what} trend={trend} at={at} />
          ))}
          <CasualtyRuns kit={at.kit} />
        </div>
      )}
    </Section>
  );
}

function KitTrend({ trend, at: { view, kit, pattern } }: { readonly trend: Trend; readonly at: KitAtHand }) {
  const words = TREND_WORDS[trend.what];
  const sentence = sayTrend(trend);
  return (
    <div className="kit-trend">
      <h3>{words.title}</h3>
      <p>{sentence}</p>
      <WhatIsBehind trend={trend} at={{ view, kit, pattern }} />
      {trend.points.length > 0 && (
        <>
          <TrendChart
            label={`${words.reading}. ${sentence} All in the table below.`}
            reading={words.reading}
            points={trend.points}
            limits={limitsOf(trend.what, pattern)}
            say={words.say}
            sayTick={words.sayTick}
          />
          <details className="kit-table">
            <summary>{words.title} as a table</summary>
            <Table
              caption={words.reading}
              isCaptionHidden
              columns={columns(kit.id, words.say)}
              rows={trend.points.toReversed()}
              rowKey={({ turnaround, casualty, at }) => `${turnaround ?? casualty?.id} ${at}`}
            />
          </details>
        </>
      )}
    </div>
  );
}

function columns(kit: string, say: (value: number) => string): readonly Column<Trend["points"][number]>[] {
  return [
    {
      key: "when",
      head: "Run",
      cell: ({ at, turnaround, casualty }) => (
        <Link to={casualty ? `/casualty/${casualty.id}` : `/kit/${kit}/turnaround/${turnaround}/record`}>
          <Timestamp at={at} as="day" />
          {casualty && `, on ${casualty.name}`}
        </Link>
      ),
    },
    { key: "value", head: "Reading", align: "figures", cell: ({ value }) => say(value) },
  ];
}
