import { scaleLinear } from "d3-scale";
import { useWords } from "../language/index.ts";
import type { Words } from "#words";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";
import "./pareto-chart.css";

/** One bar, most first. */
export interface ParetoBar {
  readonly key: string;
  readonly label: string;
  readonly count: number;
  /** Of all [1]. */
  readonly share: number;
  /** Of this and all before it [1]. */
  readonly upTo: number;
}

export interface ParetoChartProps {
  /** The whole in one sentence; the figures are in a table beside it. */
  readonly label: string;
  readonly bars: readonly ParetoBar[];
  /** All that was counted. */
  readonly all: number;
  /** What was counted: "findings". */
  readonly what: string;
}

const ROW = 58;
const BAR = 22;
const FIELD = { left: 4, top: 54, below: 34 } as const;

/** Bars, the longest first, with the line of their running share; one axis for both. */
export function ParetoChart(props: ParetoChartProps) {
  const words = useWords("drawing");
  return <WideDrawing>{(width) => <Chart {...props} words={words} width={width} />}</WideDrawing>;
}

interface ChartProps extends ParetoChartProps {
  readonly words: Words["drawing"];
  readonly width: number;
}

function Chart({ label, bars, all, what, words, width }: ChartProps) {
  const bottom = FIELD.top + ROW * bars.length;
  const across = scaleLinear([0, 1], [FIELD.left, width - 44]);
  const middle = (at: number) => FIELD.top + ROW * at + ROW - BAR / 2 - 8;
  const line = bars.map(({ upTo }, at) => `${at === 0 ? "M" : "L"}${across(upTo)} ${middle(at)}`).join("");
  return (
    <svg width={width} height={bottom + FIELD.below} role="img" aria-label={label}>
      <text x={0} y={16}>
        {words.shareOfAll({ all, what })}
      </text>
      <Ticks across={across} bottom={bottom} />
      <path className="trend-line" d={line} />
      {bars.map((bar, at) => (
        <g key={bar.key}>
          <text className="pareto-label" x={FIELD.left + 2} y={middle(at) - BAR / 2 - 8}>
            {cut(bar.label, width)}: {bar.count}
          </text>
          <rect
            className="pareto-bar"
            x={FIELD.left}
            y={middle(at) - BAR / 2}
            width={Math.max(1, across(bar.share) - FIELD.left)}
            height={BAR}
          />
        </g>
      ))}
      {bars.map((bar, at) => (
        <circle key={bar.key} className="trend-point trend-point-last" cx={across(bar.upTo)} cy={middle(at)} r={4} />
      ))}
      <text x={FIELD.left} y={bottom + 24}>
        {words.runningShare()}
      </text>
    </svg>
  );
}

function Ticks({ across, bottom }: { readonly across: (share: number) => number; readonly bottom: number }) {
  return (
    <g>
      {[0, 0.25, 0.5, 0.75, 1].map((share) => (
        <g key={share}>
          <path className="trend-grid" d={`M${across(share)} ${FIELD.top - 8}V${bottom}`} />
          <text x={across(share)} y={FIELD.top - 14} textAnchor={share === 0 ? "start" : "middle"}>
            {100 * share}
          </text>
        </g>
      ))}
    </g>
  );
}

/** As much of a name as stands on a line of this width [px]. */
function cut(label: string, width: number): string {
  const most = Math.max(12, Math.floor((width - 70) / 8.6));
  return label.length <= most ? label : `${label.slice(0, most - 1)}…`;
}
