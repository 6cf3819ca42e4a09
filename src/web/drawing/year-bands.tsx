import type { PlainDate } from "#base";
import { useWords } from "../language/index.ts";
import { useId } from "react";
import {
  dayPlaces,
  fitLabel,
  fitWord,
  layOutBands,
  type BandLayout,
  type BandPiece,
  type BandRow,
} from "./band-layout.ts";
import { BandPatterns, fillOf } from "./band-patterns.tsx";
import { monthTicks } from "./months.ts";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";

export interface YearBandsProps {
  /** What is drawn, in one line; the whole is in a table beside it. */
  readonly label: string;
  readonly rows: readonly BandRow[];
  readonly from: PlainDate;
  readonly to: PlainDate;
  readonly today: PlainDate;
}

/** A row of bands for each kit over the days ahead: months above, today as a line, each standing by pattern and word. */
export function YearBands({ label, rows, from, to, today }: YearBandsProps) {
  return (
    <WideDrawing>
      {(width) => <Bands label={label} rows={rows} from={from} to={to} today={today} width={width} />}
    </WideDrawing>
  );
}

function Bands({ label, rows, from, to, today, width }: YearBandsProps & { readonly width: number }) {
  const id = useId();
  const layout = layOutBands(width, rows.length);
  const at = dayPlaces(from, to, layout.left, layout.right);
  return (
    <svg width={width} height={layout.height} role="img" aria-label={label} className="bands">
      <BandPatterns id={id} />
      <Months layout={layout} from={from} to={to} at={at} />
      {rows.map((row, index) => (
        <Row key={row.key} row={row} index={index} layout={layout} at={at} id={id} to={to} />
      ))}
      {today >= from && today <= to && <Today layout={layout} x={at(today)} />}
    </svg>
  );
}

interface AxisProps {
  readonly layout: BandLayout;
  readonly from: PlainDate;
  readonly to: PlainDate;
  readonly at: (day: PlainDate) => number;
}

function Months({ layout, from, to, at }: AxisProps) {
  const words = useWords("bands");
  const clear = layout.left + 56;
  return monthTicks(from, to, layout.months, words).map(({ day, label }) => (
    <g key={day}>
      <path className="bands-month" d={`M${at(day)} ${layout.top - 6}V${layout.height}`} />
      {at(day) > clear && at(day) < layout.right - label.length * 8 && (
        <text className="bands-month-name" x={at(day)} y={layout.top - 11}>
          {label}
        </text>
      )}
    </g>
  ));
}

/** Today: a line with its word, at the edge the days begin from. */
function Today({ layout, x }: { readonly layout: BandLayout; readonly x: number }) {
  const words = useWords("bands");
  return (
    <g>
      <path className="bands-today" d={`M${x} ${layout.top - 8}V${layout.height}`} />
      <text className="bands-today-name" x={x} y={layout.top - 11}>
        {words.today()}
      </text>
    </g>
  );
}

interface RowProps {
  readonly row: BandRow;
  readonly index: number;
  readonly layout: BandLayout;
  readonly at: (day: PlainDate) => number;
  readonly id: string;
  readonly to: PlainDate;
}

function Row({ row, index, layout, at, id, to }: RowProps) {
  const top = layout.top + index * layout.rowHeight;
  const bar = { y: top + layout.barTop, height: layout.barHeight };
  const room = layout.isNarrow ? layout.width : layout.left - 12;
  return (
    <g className={row.isHead === true ? "bands-row bands-head" : "bands-row"}>
      <text className="bands-label" x={0} y={layout.isNarrow ? top + 18 : bar.y + 17}>
        {fitLabel(row.label, room)}
      </text>
      {row.pieces.map((piece, piecePlace) => {
        const next = row.pieces[piecePlace + 1];
        const x = at(piece.from);
        const end = next && piece.to < to ? at(next.from) : piece.to < to ? at(piece.to) : layout.right;
        return <Piece key={piece.from} piece={piece} x={x} width={end - x} bar={bar} id={id} />;
      })}
    </g>
  );
}

interface PieceProps {
  readonly piece: BandPiece;
  readonly x: number;
  readonly width: number;
  readonly bar: { readonly y: number; readonly height: number };
  readonly id: string;
}

function Piece({ piece, x, width, bar, id }: PieceProps) {
  const word = fitWord(piece.word, width);
  return (
    <g className={`band band-${piece.fill}`}>
      <rect x={x + 0.5} width={Math.max(2, width - 1)} {...bar} fill={fillOf(id, piece.fill)}>
        <title>{piece.text}</title>
      </rect>
      {word !== "" && (
        <text className="band-word" x={x + 7} y={bar.y + 17}>
          {word}
        </text>
      )}
    </g>
  );
}
