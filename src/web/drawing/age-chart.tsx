import { scaleLinear } from "d3-scale";
import { area, curveStepAfter, line } from "d3-shape";
import { useWords } from "../language/index.ts";
import { Axes } from "./axes.tsx";
import type { Words } from "#words";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";

/** A figure at an age [d], with its range where there is one. */
export interface AgePoint {
  readonly at: number;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

export interface AgeChartProps {
  /** The whole in one sentence; the figures are in a table beside it. */
  readonly label: string;
  /** What goes up, with its unit. */
  readonly reading: string;
  /** Since when ages count, after their unit: "since it was new". */
  readonly across: string;
  /** Known as it was seen: drawn as steps, from the first on. */
  readonly steps: readonly AgePoint[];
  /** By a law: drawn as a line. */
  readonly law?: readonly AgePoint[];
  /** Top of the field, in the unit of the values. */
  readonly most: number;
  /** An age of note, such as a stated life. */
  readonly mark?: { readonly at: number; readonly words: string };
}

const HEIGHT = 260;
const YEAR = 365.25;
const YEARS = { name: "yearsOf", days: YEAR } as const;
/** What is younger than two years is told in months. */
const MONTHS = { name: "monthsOf", days: YEAR / 12 } as const;

/** A figure by age: steps as they were seen, with their ranges, and a law beside them. */
export function AgeChart(props: AgeChartProps) {
  const words = useWords("drawing");
  return <WideDrawing>{(width) => <Chart {...props} words={words} width={width} />}</WideDrawing>;
}

interface Places {
  readonly x: (point: { readonly at: number }) => number;
  readonly y: (value: number) => number;
  readonly field: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

interface ChartProps extends AgeChartProps {
  readonly words: Words["drawing"];
  readonly width: number;
}

function Chart(props: ChartProps) {
  const { label, reading, across, steps, law = [], most, mark, words, width } = props;
  const field = { left: 44, right: width - 10, top: 34, bottom: HEIGHT - 52 };
  const days = Math.max(30, ...[...steps, ...law, ...(mark ? [mark] : [])].map(({ at }) => at));
  const unit = days < 2 * YEAR ? MONTHS : YEARS;
  const along = scaleLinear([0, days / unit.days], [field.left, field.right]);
  const up = scaleLinear([0, most], [field.bottom, field.top]);
  const places: Places = { x: ({ at }) => along(at / unit.days), y: (value) => up(value), field };
  return (
    <svg width={width} height={HEIGHT} role="img" aria-label={label}>
      <text x={0} y={18}>
        {reading}
      </text>
      <Axes
        field={field}
        up={up.ticks(5).map((value) => ({ place: up(value), label: `${value}` }))}
        across={along
          .ticks(Math.max(3, Math.floor(width / 110)))
          .map((year) => ({ place: along(year), label: `${year}` }))}
      />
      <text x={(field.left + field.right) / 2} y={HEIGHT - 6} textAnchor="middle">
        {words[unit.name]({ across })}
      </text>
      {mark && <Mark mark={mark} places={places} />}
      <path className="age-law" d={draw(law, places)} />
      <path className="start-band" d={bandOf(steps, places)} />
      <path className="trend-line" d={draw(steps, places, true)} />
    </svg>
  );
}

function draw(points: readonly AgePoint[], { x, y }: Places, isStepped = false): string {
  const path = line<AgePoint>()
    .x(x)
    .y(({ value }) => y(value));
  return (isStepped ? path.curve(curveStepAfter) : path)([...points]) ?? "";
}

/** From low to high, where steps have both. */
function bandOf(steps: readonly AgePoint[], { x, y }: Places): string {
  const ranged = steps.filter(({ low, high }) => low !== undefined && high !== undefined);
  const band = area<AgePoint>()
    .x(x)
    .y0(({ low = 0 }) => y(low))
    .y1(({ high = 0 }) => y(high));
  return band.curve(curveStepAfter)([...ranged]) ?? "";
}

function Mark({
  mark,
  places: { x, field },
}: {
  readonly mark: NonNullable<AgeChartProps["mark"]>;
  readonly places: Places;
}) {
  const place = x(mark);
  const isLeft = place < (field.left + field.right) / 2;
  return (
    <g>
      <path className="trend-limit" d={`M${place} ${field.top}V${field.bottom}`} />
      <text
        className="trend-limit-name"
        x={place + (isLeft ? 8 : -8)}
        y={field.bottom - 10}
        textAnchor={isLeft ? "start" : "end"}
      >
        {mark.words}
      </text>
    </g>
  );
}
