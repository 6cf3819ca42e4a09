import { usePreferences } from "#web/theme/index.ts";
import { tagOf, type Words } from "#words";
import { useReady, useWords } from "#web/language/index.ts";
import { Link } from "wouter";
import { measuredTrends, trendsOf, type Trend } from "#readiness";
import { TrendChart } from "#web/drawing/trend-chart.tsx";
import { EmptyState, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { CasualtyRuns } from "../after-use/index.ts";
import { KitStart } from "../start/kit-start.tsx";
import { WhatIsBehind } from "./trend-behind.tsx";
import { isTaken, limitsOf, sayTrend, wordsOfTrend } from "./trend-words.ts";

/** How starts, primes and deliveries have gone over the years, against the pattern's limits. */
export function KitRuns({ at }: { readonly at: KitAtHand }) {
  useReady("drawing");
  const words = useWords("kitHistory");
  const measured = measuredTrends(at.kit, at.pattern);
  const taken = trendsOf(at.kit).filter((trend) => isTaken(trend, at.pattern));
  const trends = [...taken, ...measured];
  const isNone = at.kit.runs.length === 0 && measured.every(({ points }) => points.length === 0);
  return (
    <Section id="runs" title={words.runs()}>
      {!at.kit.retired && <KitStart at={at} />}
      {isNone ? (
        <EmptyState title={words.nothingCounted()}>
          <p>{words.nothingCountedMore()}</p>
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
  const words = useWords("kitHistory");
  const { units, language } = usePreferences();
  const trendWords = useWords("trends");
  const standing = useWords("standing");
  const { title, reading: readingIn, say: sayIn, sayTick, inUnit } = wordsOfTrend(trend.what, trendWords);
  const reading = readingIn(units);
  const say = (value: number) => sayIn(value, units);
  const sentence = sayTrend(trend, units, { trends: trendWords, standing });
  return (
    <div className="kit-trend">
      <h3>{title}</h3>
      <p>{sentence}</p>
      <WhatIsBehind trend={trend} at={{ view, kit, pattern }} />
      {trend.points.length > 0 && (
        <>
          <TrendChart
            label={words.chartOf({ reading, sentence })}
            reading={reading}
            points={trend.points}
            limits={limitsOf(trend.what, pattern, units, trendWords)}
            say={say}
            language={tagOf(language)}
            sayTick={sayTick && ((value) => sayTick(value, units))}
            inUnit={inUnit && ((value) => inUnit(value, units))}
          />
          <details className="kit-table">
            <summary>{words.asTable({ title })}</summary>
            <Table
              caption={reading}
              isCaptionHidden
              columns={columns(kit.id, say, words)}
              rows={trend.points.toReversed()}
              rowKey={({ turnaround, casualty, at }) => `${turnaround ?? casualty?.id} ${at}`}
            />
          </details>
        </>
      )}
    </div>
  );
}

function columns(
  kit: string,
  say: (value: number) => string,
  words: Words["kitHistory"],
): readonly Column<Trend["points"][number]>[] {
  return [
    {
      key: "when",
      head: words.run(),
      cell: ({ at, turnaround, casualty }) => (
        <Link to={casualty ? `/casualty/${casualty.id}` : `/kit/${kit}/turnaround/${turnaround}/record`}>
          <Timestamp at={at} as="day" />
          {casualty && words.onCasualty({ name: casualty.name })}
        </Link>
      ),
    },
    { key: "value", head: words.reading(), align: "figures", cell: ({ value }) => say(value) },
  ];
}
