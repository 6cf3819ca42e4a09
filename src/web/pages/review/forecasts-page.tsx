import { sayChance } from "#words";
import { scoreForecasts, type ForecastScore, type ScoreBin } from "#reliability";
import { drillForecasts, startForecasts } from "#station";
import { useMemo } from "react";
import { useStation, type StationView } from "#web/device/index.ts";
import { Page, sayCount, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { sayOff, sayScore } from "./review-words.ts";
import { useAllLevels } from "./use-judged.ts";
import "#web/kit-view/kit.css";

/** Whether the tool is as sure as it should be: every start asked for, check in a drill, and level of a closed casualty. */
export default function ForecastsPage() {
  const view = useStation();
  const starts = useMemo(() => startsOf(view), [view]);
  const { units } = usePreferences();
  const { forecasts, left } = useAllLevels(view);
  const levels = scoreForecasts(forecasts);
  return (
    <Page title="How good our forecasts were" back={{ to: "/casualty", label: "Casualty" }}>
      <Scored
        title="Starts in turnarounds"
        about="The chance that a kit starts, told from what was known before, against whether it did. Drills are left out: faults were planted."
        score={starts.turnaround}
      />
      <Scored
        title="Starts on casualties"
        about="The same, with what may have come unseen since it was last proved."
        score={starts.casualty}
      />
      <Scored
        title="Water lower at the next sounding"
        about="On every closed casualty; as it was kept where one has been gone through."
        score={levels}
        also={sayOff(forecasts, units)}
        left={left}
      />
      <Scored
        title="Planted faults found in drills"
        about="The chance that a check finds what was planted, told from the drills before, against whether it did."
        score={starts.drills}
      />
    </Page>
  );
}

function startsOf(view: StationView) {
  const log = { kits: [...view.kits, ...view.retired], casualties: view.casualties, patterns: view.patterns };
  const all = startForecasts(log);
  const on = (where: "turnaround" | "casualty") => scoreForecasts(all.filter((one) => one.on === where));
  return { turnaround: on("turnaround"), casualty: on("casualty"), drills: scoreForecasts(drillForecasts(log)) };
}

interface ScoredProps {
  readonly title: string;
  readonly about: string;
  readonly score: ForecastScore;
  /** Said below the verdict. */
  readonly also?: string | undefined;
  /** Still to be computed. */
  readonly left?: number;
}

function Scored({ title, about, score, also, left = 0 }: ScoredProps) {
  const beside = left > 0 && <span className="quiet">{sayCount(left, "forecast")} still to compute</span>;
  return (
    <Section title={title} {...(beside && { beside })}>
      <p className="quiet">{about}</p>
      <p>{sayScore(score)}</p>
      {also && <p>{also}</p>}
      {score.bins.length > 0 && (
        <Table caption={title} isCaptionHidden columns={COLUMNS} rows={score.bins} rowKey={({ from }) => `${from}`} />
      )}
    </Section>
  );
}

const COLUMNS: readonly Column<ScoreBin>[] = [
  { key: "told", head: "Told, on average", cell: ({ told }) => sayChance(told, "ten") },
  { key: "came", head: "Came", cell: ({ came }) => sayChance(came, "ten") },
  {
    key: "range",
    head: "Nine in ten",
    cell: ({ range: [low, high] }) => `${sayChance(low, "ten")} to ${sayChance(high, "ten")}`,
  },
  { key: "count", head: "Forecasts", align: "figures", cell: ({ count }) => count },
];
