import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import { useWords } from "../language/index.ts";
import { Axes } from "./axes.tsx";
import type { Words } from "#words";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";

/** The chance of working at one age since the last proof. */
export interface CurvePoint {
  readonly days: number;
  readonly working: { readonly p05: number; readonly p50: number; readonly p95: number };
}

export interface StartCurveProps {
  /** The whole in one sentence; the figures are in a table beside it. */
  readonly label: string;
  /** From the day of the proof on. */
  readonly points: readonly CurvePoint[];
  /** Days since the last proof today, and the chance then. */
  readonly today: CurvePoint;
  readonly todayWords: string;
}

const HEIGHT = 250;
const MONTH = 30.44;

/** How the chance that a kit works falls with the months since it was last proved, with the range of nine in ten. */
export function StartCurve(props: StartCurveProps) {
  const words = useWords("drawing");
  return <WideDrawing>{(width) => <Chart {...props} words={words} width={width} />}</WideDrawing>;
}

interface ChartProps extends StartCurveProps {
  readonly words: Words["drawing"];
  readonly width: number;
}

function Chart({ label, points, today, todayWords, words, width }: ChartProps) {
  const field = { left: 44, right: width - 10, top: 34, bottom: HEIGHT - 52 };
  const months = (points.at(-1)?.days ?? MONTH) / MONTH;
  const across = scaleLinear([0, months], [field.left, field.right]);
  const up = scaleLinear([0, 10], [field.bottom, field.top]);
  const x = (point: CurvePoint) => across(point.days / MONTH);
  const y = (chance: number) => up(10 * chance);
  const ticks = across.ticks(Math.max(3, Math.floor(width / 110)));
  const isLeft = x(today) < (field.left + field.right) / 2;
  return (
    <svg width={width} height={HEIGHT} role="img" aria-label={label}>
      <text x={0} y={18}>
        {words.startTimes()}
      </text>
      <Axes
        field={field}
        up={[0, 2, 4, 6, 8, 10].map((tenth) => ({ place: up(tenth), label: `${tenth}` }))}
        across={ticks.map((month) => ({ place: across(month), label: `${month}` }))}
      />
      <text x={(field.left + field.right) / 2} y={HEIGHT - 6} textAnchor="middle">
        {words.sinceProved()}
      </text>
      <path className="start-band" d={bandOf(points, x, y)} />
      <path className="trend-line" d={lineOf(points, x, y)} />
      <path className="trend-limit" d={`M${x(today)} ${y(today.working.p05)}V${y(today.working.p95)}`} />
      <circle className="trend-point trend-point-last" cx={x(today)} cy={y(today.working.p50)} r={5} />
      <text
        className="trend-last"
        x={x(today) + (isLeft ? 10 : -10)}
        y={Math.min(field.bottom - 8, y(today.working.p05) + 22)}
        textAnchor={isLeft ? "start" : "end"}
      >
        {todayWords}
      </text>
    </svg>
  );
}

type Across = (point: CurvePoint) => number;

function bandOf(points: readonly CurvePoint[], x: Across, y: (chance: number) => number): string {
  const draw = area<CurvePoint>()
    .x(x)
    .y0(({ working }) => y(working.p05))
    .y1(({ working }) => y(working.p95));
  return draw([...points]) ?? "";
}

function lineOf(points: readonly CurvePoint[], x: Across, y: (chance: number) => number): string {
  const draw = line<CurvePoint>()
    .x(x)
    .y(({ working }) => y(working.p50));
  return draw([...points]) ?? "";
}
