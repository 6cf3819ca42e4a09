import type { OnSceneAnswer } from "#questions";
import type { FanPoint } from "../../drawing/sounding-chart-scales.ts";
import { SoundingChart } from "../../drawing/sounding-chart.tsx";
import { Section, Table, type Column } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { levelUnit, sayClock, sayLevel } from "./say.ts";
import { fanRows, soundingsDrawn } from "./soundings-drawn.ts";
import { useSheet } from "./use-sheet.ts";

interface SoundingsPartProps {
  readonly answer: OnSceneAnswer | undefined;
  /** [ms] */
  readonly now: number;
}

/** The soundings with the forecast's fan, and the same as tables. */
export function SoundingsPart({ answer, now }: SoundingsPartProps) {
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const drawn = soundingsDrawn(casualty, space, answer, now);
  if (drawn.readings.length === 0) return null;
  const say = (si: number) => sayLevel(si, units);
  return (
    <Section title="Soundings and what may come">
      <SoundingChart
        label={`Soundings of the water inside over time${drawn.fan.length > 0 ? ", and the forecast for an hour" : ""}. The figures are in the tables below.`}
        drawn={drawn}
        unit={levelUnit(units)}
        sayTime={sayClock}
      />
      <details className="casualty-more">
        <summary>The figures</summary>
        <Table
          caption="Soundings, newest first"
          columns={readingColumns(say)}
          rows={drawn.readings.toReversed()}
          rowKey={({ at }) => String(at)}
        />
        {drawn.fan.length > 0 && (
          <Table
            caption="Forecast"
            columns={fanColumns(say)}
            rows={fanRows(drawn.fan)}
            rowKey={({ at }) => String(at)}
          />
        )}
      </details>
    </Section>
  );
}

type Say = (si: number) => string;

function readingColumns(say: Say): readonly Column<{ readonly at: number; readonly level: number }>[] {
  return [
    { key: "at", head: "At", cell: ({ at }) => sayClock(at) },
    { key: "level", head: "Level", cell: ({ level }) => say(level), align: "figures" },
  ];
}

function fanColumns(say: Say): readonly Column<FanPoint>[] {
  return [
    { key: "at", head: "At", cell: ({ at }) => sayClock(at) },
    { key: "likely", head: "Likeliest", cell: ({ p50 }) => say(p50), align: "figures" },
    { key: "range", head: "9 in 10", cell: ({ p05, p95 }) => `${say(p05)} to ${say(p95)}`, align: "figures" },
  ];
}
