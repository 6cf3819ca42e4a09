import { scoreForecasts, type Forecast, type ForecastScore, type ScoreBin } from "#reliability";
import { startForecasts } from "#station";
import { useMemo } from "react";
import { useStation, type StationView } from "../../device/index.ts";
import { Page, Section } from "../../parts/index.ts";
import { Table, type Column } from "../../parts/table.tsx";
import { sayChance, sayScore } from "./review-words.ts";
import "../../kit-view/kit.css";

/** Whether the tool is as sure as it should be: every start ever asked for, and the levels of casualties gone through. */
export default function ForecastsPage() {
  const view = useStation();
  const starts = useMemo(() => startsOf(view), [view]);
  const levels = useMemo(() => scoreForecasts(levelsOf(view)), [view]);
  return (
    <Page title="How good our forecasts were" back={{ to: "/casualty", label: "Casualty" }}>
      <Scored
        title="Starts in turnarounds and drills"
        about="The chance that a kit starts, told from what was known before, against whether it did."
        score={starts.turnaround}
      />
      <Scored
        title="Starts on casualties"
        about="The same, with what may have come unseen since it was last proved."
        score={starts.casualty}
      />
      <Scored
        title="Water lower at the next sounding"
        about="Kept when a closed casualty has been gone through."
        score={levels}
      />
    </Page>
  );
}

function startsOf(view: StationView) {
  const log = { kits: [...view.kits, ...view.retired], casualties: view.casualties, patterns: view.patterns };
  const all = startForecasts(log);
  const on = (where: "turnaround" | "casualty") => scoreForecasts(all.filter((one) => one.on === where));
  return { turnaround: on("turnaround"), casualty: on("casualty") };
}

function levelsOf({ casualties }: StationView): readonly Forecast[] {
  return casualties.flatMap(({ reviewed }) => (reviewed?.forecasts ?? []).filter(({ of }) => of === "lower"));
}

interface ScoredProps {
  readonly title: string;
  readonly about: string;
  readonly score: ForecastScore;
}

function Scored({ title, about, score }: ScoredProps) {
  return (
    <Section title={title}>
      <p className="quiet">{about}</p>
      <p>{sayScore(score)}</p>
      {score.bins.length > 0 && (
        <Table caption={title} isCaptionHidden columns={COLUMNS} rows={score.bins} rowKey={({ from }) => `${from}`} />
      )}
    </Section>
  );
}

const COLUMNS: readonly Column<ScoreBin>[] = [
  { key: "told", head: "Told, on average", cell: ({ told }) => sayChance(told) },
  { key: "came", head: "Came", cell: ({ came }) => sayChance(came) },
  { key: "range", head: "Nine in ten", cell: ({ range: [low, high] }) => `${sayChance(low)} to ${sayChance(high)}` },
  { key: "count", head: "Forecasts", align: "figures", cell: ({ count }) => count },
];
