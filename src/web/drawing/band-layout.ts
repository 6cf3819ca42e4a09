import { dayNumber, type PlainDate } from "#base";

/** What a stretch of days is drawn as: a standing, or whether a place's strength is met. */
export type BandFill = "ready" | "ready-with-limits" | "grounded" | "open" | "away" | "enough" | "short";

/** A stretch of days of one row, first and last inclusive. */
export interface BandPiece {
  readonly from: PlainDate;
  readonly to: PlainDate;
  readonly fill: BandFill;
  /** Written on the band where there is room. */
  readonly word: string;
  /** The whole of it, for the table. */
  readonly text: string;
}

export interface BandRow {
  readonly key: string;
  readonly label: string;
  readonly pieces: readonly BandPiece[];
  /** Drawn heavier, as a heading of the rows below it. */
  readonly isHead?: boolean;
}

/** Where things stand in the drawing [px]. */
export interface BandLayout {
  readonly width: number;
  readonly height: number;
  /** Left edge of the days; the labels stand before it, or above each row on a narrow screen. */
  readonly left: number;
  readonly right: number;
  readonly isNarrow: boolean;
  readonly rowHeight: number;
  readonly barTop: number;
  readonly barHeight: number;
  readonly top: number;
  readonly months: number;
}

const NARROW = 640;
const AXIS = 30;

/** Lays rows out at a width: labels beside the bars, or above them where there is no room. */
export function layOutBands(width: number, rows: number): BandLayout {
  const isNarrow = width < NARROW;
  const rowHeight = isNarrow ? 54 : 36;
  return {
    width,
    height: AXIS + rows * rowHeight + 8,
    left: isNarrow ? 1 : 208,
    right: width - 1,
    isNarrow,
    rowHeight,
    barTop: isNarrow ? 24 : 6,
    barHeight: 24,
    top: AXIS,
    months: Math.max(2, Math.floor((width - (isNarrow ? 0 : 208)) / 70)),
  };
}

/** Place of the first moment of a day between two edges [px]. */
export function dayPlaces(from: PlainDate, to: PlainDate, left: number, right: number): (day: PlainDate) => number {
  const first = dayNumber(from);
  const perDay = (right - left) / (dayNumber(to) + 1 - first);
  return (day) => left + (dayNumber(day) - first) * perDay;
}

/** Letters a label may have in so much room, at the size labels are written. */
export function fitLabel(label: string, room: number, letter = 8.6): string {
  const most = Math.max(3, Math.floor(room / letter));
  return label.length <= most ? label : `${label.slice(0, most - 1).trimEnd()}\u2026`;
}

/** The word for a band so wide, or nothing where it would not fit. */
export function fitWord(word: string, room: number, letter = 8.6): string {
  return word.length * letter + 10 <= room ? word : "";
}
