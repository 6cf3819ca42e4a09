import { useWords } from "#web/language/index.ts";
import type { KeptForecast } from "#readiness";
import { sayChance, type Words } from "#words";
import { scoreForecasts, type ForecastScore, type ScoreBin } from "#reliability";
import { drillForecasts, startForecasts } from "#station";
import { useMemo } from "react";
import { useStation, type StationView } from "#web/device/index.ts";
import { EmptyState, Page, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { ToldOf } from "#web/kit-view/starts/told-of.tsx";
import { sayMarks, sayOff, sayScore } from "./review-words.ts";
import { useAllLevels } from "./use-judged.ts";
import "#web/kit-view/kit.css";

/** Whether the tool is as sure as it should be: every start asked for, check in a drill, and level of a closed casualty. */
export default function ForecastsPage() {
  const words = useWords("review");
  const frame = useWords("frame");
  const isEarly = useStation().early !== undefined;
  return (
    <Page title={words.forecastsTitle()} back={{ to: "/casualty", label: frame.casualty() }}>
      {isEarly ? (
        <EmptyState title={words.forecastsEarly()}>
          <p>{words.forecastsEarlyMore()}</p>
        </EmptyState>
      ) : (
        <AllScored />
      )}
    </Page>
  );
}

function AllScored() {
  const words = useWords("review");
  const view = useStation();
  const starts = useMemo(() => startsOf(view), [view]);
  const { units } = usePreferences();
  const { forecasts, left } = useAllLevels(view);
  return (
    <>
      <ToldOf kits={[...view.kits, ...view.retired]} />
      <Scored title={words.turnarounds()} about={words.turnaroundsMore()} forecasts={starts.turnaround} />
      <Scored title={words.casualties()} about={words.casualtiesMore()} forecasts={starts.casualty} />
      <Scored
        title={words.lower()}
        about={words.levelsMore()}
        forecasts={forecasts}
        also={sayOff(forecasts, units, words)}
        left={left}
      />
      <Scored title={words.drills()} about={words.drillsMore()} forecasts={starts.drills} />
    </>
  );
}

function startsOf(view: StationView) {
  const log = { kits: [...view.kits, ...view.retired], casualties: view.casualties, patterns: view.patterns };
  const all = startForecasts(log);
  const on = (where: "turnaround" | "casualty") => all.filter((one) => one.on === where);
  return { turnaround: on("turnaround"), casualty: on("casualty"), drills: drillForecasts(log) };
}

interface ScoredProps {
  readonly title: string;
  readonly about: string;
  readonly forecasts: readonly Pick<KeptForecast, "at" | "chance" | "came">[];
  /** Said below the verdict. */
  readonly also?: string | undefined;
  /** Still to be computed. */
  readonly left?: number;
}

function Scored({ title, about, forecasts, also, left = 0 }: ScoredProps) {
  const words = useWords("review");
  const score = useMemo(() => scoreForecasts(forecasts), [forecasts]);
  const beside = left > 0 && <span className="quiet">{words.left({ count: left })}</span>;
  return (
    <Section title={title} {...(beside && { beside })}>
      <p className="quiet">{about}</p>
      <p>{sayScore(forecasts, score, words)}</p>
      {also && <p>{also}</p>}
      {score.count > 0 && <InFigures title={title} score={score} />}
    </Section>
  );
}

function InFigures({ title, score }: { readonly title: string; readonly score: ForecastScore }) {
  const words = useWords("review");
  return (
    <>
      <p className="quiet">{words.tableMore()}</p>
      <Table
        caption={title}
        isCaptionHidden
        columns={columnsOf(words)}
        rows={score.bins}
        rowKey={({ from }) => `${from}`}
      />
      <details>
        <summary>{words.marksTitle()}</summary>
        <p>{sayMarks(score, words)}</p>
      </details>
    </>
  );
}

function columnsOf(words: Words["review"]): readonly Column<ScoreBin>[] {
  return [
    { key: "told", head: words.toldMean(), cell: ({ told }) => sayChance(told, "ten") },
    { key: "came", head: words.ofThese(), cell: ({ came }) => sayChance(came, "ten") },
    {
      key: "range",
      head: words.nineInTen(),
      cell: ({ range: [low, high] }) => words.range({ low: sayChance(low, "ten"), high: sayChance(high, "ten") }),
    },
    { key: "count", head: words.forecasts(), align: "figures", cell: ({ count }) => count },
  ];
}
