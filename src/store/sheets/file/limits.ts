/** What a sheet may be at most: enough for any station, small enough for a telephone. */
export const SHEET_LIMITS = {
  /** The file [byte]. */
  bytes: 5_000_000,
  /** What a workbook unpacks to, those parts of it that are read [byte]. */
  unpacked: 60_000_000,
  /** Parts of a workbook. */
  parts: 2_000,
  /** Rows that hold anything, the headings left out. */
  rows: 2_000,
  columns: 80,
  /** Characters of a cell. */
  cell: 2_000,
} as const;
