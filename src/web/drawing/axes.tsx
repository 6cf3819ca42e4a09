/** The field of a chart within its drawing [px]. */
export interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A tick: where it stands along its axis [px] and what is written at it. */
export interface Tick {
  readonly place: number;
  readonly label: string;
}

export interface AxesProps {
  readonly field: Field;
  /** Up the left side, each with a line across the field. */
  readonly up: readonly Tick[];
  /** Along the bottom. */
  readonly across: readonly Tick[];
}

/** The two axes of a chart with their ticks. What they measure, and in which unit, the chart itself writes. */
export function Axes({ field, up, across }: AxesProps) {
  return (
    <g>
      {up.map(({ place, label }) => (
        <g key={place}>
          <path className="trend-grid" d={`M${field.left} ${place}H${field.right}`} />
          <text x={field.left - 8} y={place + 5} textAnchor="end">
            {label}
          </text>
        </g>
      ))}
      {across.map(({ place, label }) => (
        <g key={place}>
          <path className="trend-axis" d={`M${place} ${field.bottom}v6`} />
          <text x={place} y={field.bottom + 23} textAnchor="middle">
            {label}
          </text>
        </g>
      ))}
      <path className="trend-axis" d={`M${field.left} ${field.top}V${field.bottom}H${field.right}`} />
    </g>
  );
}
