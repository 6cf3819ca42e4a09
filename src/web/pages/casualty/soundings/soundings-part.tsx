import { useWords } from "#web/language/index.ts";
import { levelUnit, sayLevel, sayLevelAbout, type Words } from "#words";
import type { FanPoint } from "#web/drawing/sounding-chart-scales.ts";
import { SoundingChart } from "#web/drawing/sounding-chart.tsx";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { sayClock } from "../sheet/say.ts";
import { fanRows, soundingsDrawn } from "./soundings-drawn.ts";
import { isAboveDeck } from "../word/verdict-words.ts";
import { sayTrend, sayTrendAhead } from "../word/trend-words.ts";
import type { Scene } from "../word/use-scene.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** The soundings with the forecast's fan, and the same as tables; no fan where what is known is history or does not fit. */
export function SoundingsPart({ scene }: { readonly scene: Scene }) {
  const words = useWords("soundings");
  const word = useWords("sheetWord");
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const { answer } = scene.shown;
  const trend = answer?.reading?.trend;
  const isToCheck = answer !== undefined && isAboveDeck(answer);
  const isForecast = !scene.isHistory && !isToCheck && answer?.reading?.misfit !== true;
  const drawn = soundingsDrawn(casualty, space, isForecast ? answer : undefined, scene.minute);
  if (drawn.readings.length === 0) return null;
  const say = (si: number) => sayLevel(si, units);
  return (
    <Section title={drawn.fan.length > 0 ? words.soundingsAhead() : words.soundings()}>
      <SoundingChart
        label={drawn.fan.length > 0 ? words.chartAhead() : words.chart()}
        drawn={drawn}
        unit={levelUnit(units)}
        sayTime={sayClock}
      />
      {!isForecast && !casualty.closed && <p className="quiet">{words[whyNoForecast(scene, isToCheck)]()}</p>}
      {trend && !scene.isHistory && (
        <p>
          <strong>{sayTrend(trend, word)}</strong> {sayTrendAhead(trend, units, word)}
        </p>
      )}
      <details className="casualty-more">
        <summary>{words.figures()}</summary>
        <Table
          caption={words.newestFirst()}
          columns={readingColumns(say, words)}
          rows={drawn.readings.toReversed()}
          rowKey={({ at }) => String(at)}
        />
        {drawn.fan.length > 0 && (
          <Table
            caption={words.forecast()}
            columns={fanColumns((si) => sayLevelAbout(si, units), words)}
            rows={fanRows(drawn.fan)}
            rowKey={({ at }) => String(at)}
          />
        )}
      </details>
    </Section>
  );
}

function whyNoForecast({ isHistory }: Scene, isToCheck: boolean): "tooOld" | "toCheck" | "noFit" {
  if (isHistory) return "tooOld";
  return isToCheck ? "toCheck" : "noFit";
}

type Say = (si: number) => string;

function readingColumns(
  say: Say,
  words: Words["soundings"],
): readonly Column<{ readonly at: number; readonly level: number }>[] {
  return [
    { key: "at", head: words.at(), cell: ({ at }) => sayClock(at) },
    { key: "level", head: words.level(), cell: ({ level }) => say(level), align: "figures" },
  ];
}

function fanColumns(say: Say, words: Words["soundings"]): readonly Column<FanPoint>[] {
  return [
    { key: "at", head: words.at(), cell: ({ at }) => sayClock(at) },
    { key: "likely", head: words.likeliest(), cell: ({ p50 }) => say(p50), align: "figures" },
    {
      key: "range",
      head: words.nineInTen(),
      cell: ({ p05, p95 }) => words.range({ low: say(p05), high: say(p95) }),
      align: "figures",
    },
  ];
}
