import { Link } from "wouter";
import { trendsOf, type Trend } from "#readiness";
import { TrendChart } from "../../drawing/trend-chart.tsx";
import { EmptyState, Section, Table, Timestamp, type Column } from "../../parts/index.ts";
import type { KitAtHand } from "../turnaround/at-hand.ts";
import { limitsOf, sayTrend, TREND_WORDS } from "./trend-words.ts";

/** How starts, primes and deliveries have gone over the years, against the pattern's limits. */
export function KitRuns({ at }: { readonly at: KitAtHand }) {
  const trends = trendsOf(at.kit);
  const isNone = trends.every(({ points }) => points.length === 0);
  return (
    <Section id="runs" title="Runs">
      {isNone ? (
        <EmptyState title="Nothing was counted or timed yet">
          <p>Pulls, prime and delivery are taken down in the run of a turnaround.</p>
        </EmptyState>
      ) : (
        <div className="kit-trends">
          {trends.map((trend) => (
            <KitTrend key={trend.what} trend={trend} at={at} />
          ))}
        </div>
      )}
    </Section>
  );
}

function KitTrend({ trend, at: { kit, pattern } }: { readonly trend: Trend; readonly at: KitAtHand }) {
  const words = TREND_WORDS[trend.what];
  const sentence = sayTrend(trend);
  return (
    <div className="kit-trend">
      <h3>{words.title}</h3>
      <p>{sentence}</p>
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
              rowKey={({ turnaround, at }) => `${turnaround} ${at}`}
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
      head: "Turnaround",
      cell: ({ at, turnaround }) => (
        <Link to={`/kit/${kit}/turnaround/${turnaround}/record`}>
          <Timestamp at={at} as="day" />
        </Link>
      ),
    },
    { key: "value", head: "Reading", align: "figures", cell: ({ value }) => say(value) },
  ];
}
