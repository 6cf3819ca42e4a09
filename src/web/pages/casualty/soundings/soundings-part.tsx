import { levelUnit, sayLevel, sayLevelAbout } from "#words";
import type { FanPoint } from "#web/drawing/sounding-chart-scales.ts";
import { SoundingChart } from "#web/drawing/sounding-chart.tsx";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { sayClock } from "../sheet/say.ts";
import { fanRows, soundingsDrawn } from "./soundings-drawn.ts";
import { sayTrend, sayTrendAhead } from "../word/trend-words.ts";
import type { Scene } from "../word/use-scene.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** The soundings with the forecast's fan, and the same as tables; no fan where what is known is history or does not fit. */
export function SoundingsPart({ scene }: { readonly scene: Scene }) {
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const { answer } = scene.shown;
  const trend = answer?.reading?.trend;
  const isForecast = !scene.isHistory && answer?.reading?.misfit !== true;
  const drawn = soundingsDrawn(casualty, space, isForecast ? answer : undefined, scene.minute);
  if (drawn.readings.length === 0) return null;
  const say = (si: number) => sayLevel(si, units);
  return (
    <Section title={drawn.fan.length > 0 ? "Soundings and what may come" : "Soundings"}>
      <SoundingChart
        label={`Soundings of the water inside over time${drawn.fan.length > 0 ? ", and the forecast for an hour" : ""}. The figures are in the tables below.`}
        drawn={drawn}
        unit={levelUnit(units)}
        sayTime={sayClock}
      />
      {!isForecast && !casualty.closed && <p className="quiet">{scene.isHistory ? TOO_OLD : NO_FIT}</p>}
      {trend && !scene.isHistory && (
        <p>
          <strong>{sayTrend(trend)}</strong> {sayTrendAhead(trend, units)}
        </p>
      )}
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
            columns={fanColumns((si) => sayLevelAbout(si, units))}
            rows={fanRows(drawn.fan)}
            rowKey={({ at }) => String(at)}
          />
        )}
      </details>
    </Section>
  );
}

const TOO_OLD = "Nothing is forecast from a sounding as old as the last one.";
const NO_FIT = "Nothing is forecast from soundings that do not fit.";

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
