import { useId, type ReactNode } from "react";
import { area, line } from "d3-shape";
import { useWords } from "../language/index.ts";
import { Axes } from "./axes.tsx";
import type { AxisUnit } from "./delivery-scales.ts";
import {
  placeSoundings,
  type SoundingFrame,
  type SoundingPlaces,
  type SoundingsDrawn,
} from "./sounding-chart-scales.ts";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";
import "./sounding-chart.css";

export interface SoundingChartProps {
  /** The whole in one sentence; the figures are in a table beside it. */
  readonly label: string;
  readonly drawn: SoundingsDrawn;
  readonly unit: AxisUnit;
  readonly sayTime: (at: number) => string;
}

/** Soundings on the wall clock, when pumps ran, and what the level may do in the hour to come. */
export function SoundingChart(props: SoundingChartProps) {
  return (
    <div className="curve">
      <WideDrawing>{(width) => <Chart {...props} width={width} />}</WideDrawing>
      <Legend hasFan={props.drawn.fan.length > 0} hasRuns={props.drawn.runs.length > 0} />
    </div>
  );
}

function Chart({ label, drawn, unit, sayTime, width }: SoundingChartProps & { readonly width: number }) {
  const words = useWords("soundings");
  const id = useId();
  const height = width < 560 ? 270 : 340;
  const frame: SoundingFrame = { left: 40, right: width - 14, top: 42, bottom: height - 44 };
  const places = placeSoundings(drawn, unit, frame, sayTime);
  return (
    <svg width={width} height={height} role="img" aria-label={label}>
      <defs>
        <clipPath id={`${id}-field`}>
          <rect x={frame.left} y={frame.top} width={frame.right - frame.left} height={frame.bottom - frame.top} />
        </clipPath>
      </defs>
      <text x={0} y={16}>
        {words.levelAxis({ unit: unit.symbol })}
      </text>
      <Axes field={frame} up={places.up} across={places.across} />
      <g clipPath={`url(#${id}-field)`}>
        <Fan places={places} />
      </g>
      {places.beyond !== undefined && (
        <text x={frame.right} y={16} textAnchor="end">
          {words.bandGoesOn({ level: places.beyond })}
        </text>
      )}
      {places.now !== undefined && <Now at={places.now} frame={frame} />}
      {places.runs.map(({ from, to }) => (
        <rect
          key={from}
          className="soundings-run"
          x={from}
          y={frame.bottom - 5}
          width={Math.max(2, to - from)}
          height={5}
        />
      ))}
      {places.readings.map(({ x, y }) => (
        <circle key={x} className="trend-point trend-point-last" cx={x} cy={y} r={5} />
      ))}
    </svg>
  );
}

function Now({ at, frame }: { readonly at: number; readonly frame: SoundingFrame }) {
  const words = useWords("soundings");
  return (
    <g>
      <path className="soundings-now" d={`M${at} ${frame.top}V${frame.bottom}`} />
      <text x={Math.min(at, frame.right - 20)} y={frame.top - 6} textAnchor="middle">
        {words.nowMark()}
      </text>
    </g>
  );
}

type Banded = SoundingPlaces["wide"][number];

const drawBand = area<Banded>(
  ({ x }) => x,
  ({ y }) => y,
  ({ top }) => top,
);
const drawLine = line<{ readonly x: number; readonly y: number }>(
  ({ x }) => x,
  ({ y }) => y,
);

function Fan({ places }: { readonly places: SoundingPlaces }) {
  return (
    <g>
      <path className="soundings-wide" d={drawBand([...places.wide]) ?? ""} />
      <path className="soundings-narrow" d={drawBand([...places.narrow]) ?? ""} />
      <path className="soundings-median" d={drawLine([...places.median]) ?? ""} />
    </g>
  );
}

function Legend({ hasFan, hasRuns }: { readonly hasFan: boolean; readonly hasRuns: boolean }) {
  const words = useWords("soundings");
  return (
    <ul className="soundings-legend">
      <Mark words={words.soundedMark()} mark={<circle className="trend-point-last" cx="20" cy="9" r="5" />} />
      {hasRuns && (
        <Mark words={words.pumping()} mark={<rect className="soundings-run" x="2" y="7" width="36" height="5" />} />
      )}
      {hasFan && (
        <>
          <Mark words={words.likeliest()} mark={<path className="soundings-median" d="M1 9H39" />} />
          <Mark
            words={words.nineInTen()}
            mark={<rect className="soundings-wide" x="2" y="1" width="36" height="16" />}
          />
          <Mark
            words={words.oneInTwo()}
            mark={<rect className="soundings-narrow" x="2" y="1" width="36" height="16" />}
          />
        </>
      )}
    </ul>
  );
}

function Mark({ words, mark }: { readonly words: string; readonly mark: ReactNode }) {
  return (
    <li>
      <svg width="40" height="18" aria-hidden="true">
        {mark}
      </svg>
      {words}
    </li>
  );
}
