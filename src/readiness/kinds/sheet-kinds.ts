/** Where a line came from that nobody typed: a row of a spreadsheet. What it says is what the sheet says. */
export interface FromSheet {
  /** Name of the file, with the sheet in it where there are several. */
  readonly file: string;
  /** Number of the row as the spreadsheet shows it, from 1. */
  readonly row: number;
}

/** What an entry with subject "kit:..." may say of work done before the kit was in this log. */
export interface ToldBodies {
  /**
   * A turnaround that somebody tells of, by a sheet or from a book. It is a statement and proves nothing: no kit is ready
   * by it, and nothing is counted from its day.
   */
  "turnaround-told": {
    /** "YYYY-MM-DD", or "YYYY-MM" where only the month is known. */
    readonly day: string;
    /** Who did it, in the teller's words. */
    readonly doneBy?: string;
    /** How it went, in the teller's words. */
    readonly result?: string;
    readonly note?: string;
    readonly sheet?: FromSheet;
  };
}
