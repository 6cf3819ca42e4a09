import { line } from "d3-shape";
import { useWords } from "../language/index.ts";
import { Axes } from "./axes.tsx";
import {
  placeTrend,
  type TrendFrame,
  type TrendLimit,
  type TrendPlaces,
  type TrendPoint,
  wordsBeside,
} from "./trend-scales.ts";
import type { Words } from "#words";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";

export interface TrendChartProps {
  /** The whole in one sentence; the figures are in a table beside it. */
  readonly label: string;
  /** Name of what is read, with its unit, above the axis: "Seconds from first stroke to water". */
  readonly reading: string;
  /** At least one, oldest first. */
  readonly points: readonly TrendPoint[];
  readonly limits: readonly TrendLimit[];
  /** A reading in the person's words. */
  readonly say: (value: number) => string;
  /** A reading at the axis, where the bare number would mislead. */
  readonly sayTick?: ((value: number) => string) | undefined;
  /** A reading in the unit that the axis names, where that is not the reading's own. */
  readonly inUnit?: ((value: number) => number) | undefined;
  /** Tag of the language by BCP 47, for days. */
  readonly language: string;
}

const HEIGHT = 248;

/** Readings over the years, with the lines they are held to. */
export function TrendChart(props: TrendChartProps) {
  const words = useWords("drawing");
  return <WideDrawing>{(width) => <Chart {...props} words={words} width={width} />}</WideDrawing>;
}

interface ChartProps extends TrendChartProps {
  readonly words: Words["drawing"];
  readonly width: number;
}

function Chart({ label, reading, points, limits, say, sayTick, inUnit, language, words, width }: ChartProps) {
  const frame: TrendFrame = { left: 54, right: width - 4, top: 52, bottom: HEIGHT - 30 };
  const placed = placeTrend(points, limits, frame, { language, sayValue: sayTick, inUnit });
  const begins = placed.begins && words.axisBegins({ at: placed.begins });
  return (
    <svg width={width} height={HEIGHT} role="img" aria-label={begins ? `${label} ${begins}` : label}>
      <text x={0} y={18}>
        {reading}
      </text>
      {begins && (
        <text x={0} y={38}>
          {begins}
        </text>
      )}
      <Axes field={frame} up={placed.up} across={placed.across} />
      <Limits placed={placed} frame={frame} />
      <Readings placed={placed} frame={frame} say={say} />
    </svg>
  );
}

interface PartProps {
  readonly placed: TrendPlaces;
  readonly frame: TrendFrame;
}

/** A line the readings are held to, its name on the side where fewer of them lie. */
function Limits({ placed, frame }: PartProps) {
  const above = (y: number) => placed.points.filter((point) => point.y < y).length;
  return placed.limits.map(({ label, y }) => (
    <g key={label}>
      <path className="trend-limit" d={`M${frame.left} ${y}H${frame.right}`} />
      <text
        className="trend-limit-name"
        x={frame.left + 8}
        y={wordsBeside(y, above(y) * 2 > placed.points.length, { below: 17, above: 7 }, frame)}
      >
        {label}
      </text>
    </g>
  ));
}

const draw = line<{ readonly x: number; readonly y: number }>(
  (point) => point.x,
  (point) => point.y,
);

function Readings({ placed, frame, say }: PartProps & Pick<TrendChartProps, "say">) {
  const last = placed.points.at(-1);
  const isFalling = (placed.points.at(-2)?.y ?? Infinity) < (last?.y ?? 0);
  return (
    <g>
      <path className="trend-line" d={draw([...placed.points]) ?? ""} />
      {placed.points.map((point) => (
        <circle
          key={`${point.x} ${point.y}`}
          className={point === last ? "trend-point trend-point-last" : "trend-point"}
          cx={point.x}
          cy={point.y}
          r={point === last ? 5 : 4}
        />
      ))}
      {last && (
        <text
          className="trend-last"
          x={Math.min(last.x, frame.right - 4)}
          y={wordsBeside(last.y, isFalling, { below: 24, above: 11 }, frame)}
          textAnchor="end"
        >
          {say(last.value)}
        </text>
      )}
    </g>
  );
}
